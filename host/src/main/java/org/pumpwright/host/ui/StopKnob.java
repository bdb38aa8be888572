package org.pumpwright.host.ui;

import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.input.MouseEvent;

/**
 * The window's STOP. It acts when it is pressed, not when it is let go. Tab does not reach it, so that no space bar meant for something
 * else does; its keys always do. It does not look like an emergency stop, because it is none. JavaFX thread only.
 */
final class StopKnob extends Button {
    StopKnob(Saying saying, String keys, Runnable stop) {
        setId("stop");
        getStyleClass().add("stop");
        setFocusTraversable(false);
        setContentDisplay(ContentDisplay.BOTTOM);
        setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        Label key = new Label(keys);
        key.getStyleClass().add("key");
        setGraphic(key);
        textProperty().bind(saying.text("ui.stop"));
        addEventFilter(MouseEvent.MOUSE_PRESSED, pressed -> {
            stop.run();
            pressed.consume();
        });
        setOnAction(pressed -> stop.run());
    }
}
