package org.pumpwright.host.ui;

import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;

/** Keys that go through the window system, as those of a keyboard do. JavaFX thread only. */
final class RobotKeyboard implements Keyboard {
    private final Robot robot = new Robot();

    @Override
    public void press(KeyCode key) {
        robot.keyPress(key);
        robot.keyRelease(key);
    }

    @Override
    public void press(KeyCode held, KeyCode key) {
        robot.keyPress(held);
        press(key);
        robot.keyRelease(held);
    }

    @Override
    public void type(String text) {
        for (char character : text.toCharArray()) {
            type(character);
        }
    }

    private void type(char character) {
        if (Character.isDigit(character)) {
            press(KeyCode.valueOf("DIGIT" + character));
        } else if (Character.isUpperCase(character)) {
            press(KeyCode.SHIFT, KeyCode.valueOf(String.valueOf(character)));
        } else {
            press(character == '-' ? KeyCode.MINUS : KeyCode.SPACE);
        }
    }
}
