package org.pumpwright.host.ui;

import javafx.scene.input.KeyCode;

/** Keys that a person presses. JavaFX thread only. */
interface Keyboard {
    /** Presses a key and lets it go. */
    void press(KeyCode key);

    /** The same while Control, Alt or Shift is held. */
    void press(KeyCode held, KeyCode key);

    /** Types capitals, digits, dashes and spaces. */
    void type(String text);
}
