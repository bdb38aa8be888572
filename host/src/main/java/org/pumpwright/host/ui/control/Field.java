package org.pumpwright.host.ui.control;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A field to type into, its name above. JavaFX thread only. */
public final class Field extends VBox {
    private final TextField field = new TextField();

    /**
     * An empty field.
     *
     * @param id of the part that is typed into
     */
    public Field(ObservableValue<String> name, String id) {
        getStyleClass().add("field");
        Label label = new Label();
        label.getStyleClass().add("field-name");
        label.setLabelFor(field);
        label.textProperty().bind(name);
        field.setId(id);
        getChildren().addAll(label, field);
    }

    /** The part that is typed into. */
    public TextField text() {
        return field;
    }
}
