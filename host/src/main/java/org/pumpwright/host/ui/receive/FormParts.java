package org.pumpwright.host.ui.receive;

import java.util.List;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What the pages of this screen are put together from. JavaFX thread only. */
final class FormParts {
    private FormParts() {}

    static TextField field(String id, StringProperty value) {
        TextField field = new TextField();
        field.setId(id);
        field.setMinWidth(0);
        field.setPrefColumnCount(6);
        field.textProperty().bindBidirectional(value);
        return field;
    }

    static Label heading(ObservableValue<String> text) {
        return label("heading", text);
    }

    static Label label(String style, ObservableValue<String> text) {
        Label label = new Label();
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.textProperty().bind(text);
        return label;
    }

    /** Choices in two columns of the same width. */
    static GridPane grid(List<? extends Node> nodes) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("choice-grid");
        ColumnConstraints half = new ColumnConstraints();
        half.setPercentWidth(50);
        grid.getColumnConstraints().addAll(half, half);
        for (int i = 0; i < nodes.size(); i++) {
            grid.add(nodes.get(i), i % 2, i / 2);
        }
        return grid;
    }

    static VBox column(String style, Node... parts) {
        VBox column = new VBox(parts);
        column.getStyleClass().addAll("column", style);
        return column;
    }

    /** A sign and its words side by side. */
    static HBox signed(Node sign, Label words, String style) {
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox line = new HBox(sign, words);
        line.getStyleClass().add(style);
        return line;
    }
}
