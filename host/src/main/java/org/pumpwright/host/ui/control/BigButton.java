package org.pumpwright.host.ui.control;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;

/** A button for a wet glove: its word large, its key small above. JavaFX thread only. */
public final class BigButton extends Button {
    private final Label key = new Label();

    /** A button with a word and the key that does the same; an empty key is not shown. */
    public BigButton(ObservableValue<String> word, String keyName) {
        getStyleClass().add("big-button");
        key.getStyleClass().add("key");
        key.setText(keyName);
        setWrapText(true);
        setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        if (!keyName.isEmpty()) {
            setContentDisplay(ContentDisplay.TOP);
            setGraphic(key);
        }
        textProperty().bind(word);
    }
}
