package org.pumpwright.host.ui;

import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Keys as the toolkit tells a scene of them, where there is no window system. JavaFX thread only. */
final class SceneKeyboard implements Keyboard {
    private final Scene scene;

    SceneKeyboard(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void press(KeyCode key) {
        WindowTest.press(scene, key);
    }

    @Override
    public void press(KeyCode held, KeyCode key) {
        WindowTest.press(scene, key, held == KeyCode.CONTROL, held == KeyCode.ALT);
    }

    @Override
    public void type(String text) {
        for (char character : text.toCharArray()) {
            Node target = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
            Event.fireEvent(
                    target,
                    new KeyEvent(
                            KeyEvent.KEY_TYPED,
                            String.valueOf(character),
                            "",
                            KeyCode.UNDEFINED,
                            false,
                            false,
                            false,
                            false));
        }
    }
}
