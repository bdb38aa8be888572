package org.pumpwright.host.ui;

import javafx.scene.Scene;
import javafx.scene.input.KeyCode;

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
        WindowTest.typed(scene, text);
    }
}
