package org.pumpwright.host.ui.claim;

import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.Word;

/** The fields of a form, one below the other or two side by side, and at their end what is still lacking. JavaFX thread only. */
final class FormColumn extends VBox {
    private final Saying saying;

    FormColumn(Saying saying) {
        this.saying = saying;
        getStyleClass().add("claim-form");
        setMinHeight(0);
    }

    /** Adds a field, or several side by side. */
    FormColumn with(Region... fields) {
        if (fields.length == 1) {
            getChildren().add(fields[0]);
            return this;
        }
        HBox row = new HBox(fields);
        row.getStyleClass().add("field-row");
        for (Region field : fields) {
            field.setPrefWidth(0);
            HBox.setHgrow(field, Priority.ALWAYS);
        }
        getChildren().add(row);
        return this;
    }

    /** Adds a line above what is chosen next. */
    FormColumn titled(String key) {
        Label label = new Label();
        label.getStyleClass().add("field-name");
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.textProperty().bind(saying.text(key));
        getChildren().add(label);
        return this;
    }

    /** Adds a sentence that takes no place while there is nothing to say. */
    FormColumn saying(ObservableValue<Word> word, String id) {
        getChildren().add(sentence(saying, word, id));
        return this;
    }

    /** A sentence with a bar at its left; it takes no place while there is nothing to say. */
    static Label sentence(Saying saying, ObservableValue<Word> word, String id) {
        Label label = new Label();
        label.setId(id);
        label.getStyleClass().add("claim-need");
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.textProperty().bind(saying.text(word));
        label.visibleProperty().bind(label.textProperty().isNotEmpty());
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }

    /** Shows a field only while this holds. */
    static <N extends Node> N onlyWhile(N field, ObservableBooleanValue holds) {
        field.visibleProperty().bind(holds);
        field.managedProperty().bind(holds);
        return field;
    }
}
