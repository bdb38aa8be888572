package org.pumpwright.host.ui;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Lays a question over the screen in front. JavaFX thread only. */
final class PromptPane extends StackPane {
    private final VBox sheet = new VBox();

    PromptPane() {
        setId("prompt");
        getStyleClass().add("prompt");
        sheet.getStyleClass().add("prompt-sheet");
        sheet.setAlignment(Pos.CENTER_LEFT);
        sheet.setMaxHeight(USE_PREF_SIZE);
        getChildren().add(sheet);
        setVisible(false);
    }

    void show(Prompt prompt) {
        Label title = new Label();
        title.getStyleClass().add("prompt-title");
        title.setWrapText(true);
        title.textProperty().bind(prompt.title());
        Label text = new Label();
        text.setWrapText(true);
        text.textProperty().bind(prompt.text());
        sheet.getChildren().setAll(title, text);
        prompt.more().ifPresent(sheet.getChildren()::add);
        setVisible(true);
    }

    void hide() {
        setVisible(false);
        sheet.getChildren().clear();
    }
}
