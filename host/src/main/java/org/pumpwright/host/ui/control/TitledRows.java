package org.pumpwright.host.ui.control;

import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.Row;

/** Findings under a heading, one of two columns beside each other. JavaFX thread only. */
public final class TitledRows extends VBox {
    /**
     * Shows these rows and follows them.
     *
     * @param key text of the heading
     * @param id of the list
     */
    public TitledRows(Saying saying, String key, ObservableList<Row> rows, String id) {
        Label heading = new Label();
        heading.getStyleClass().add("heading");
        heading.setWrapText(true);
        heading.setMinHeight(USE_PREF_SIZE);
        heading.textProperty().bind(saying.text(key));
        RowList list = new RowList(saying, rows);
        list.setId(id);
        VBox.setVgrow(list, Priority.ALWAYS);
        getStyleClass().addAll("column", "column-half");
        HBox.setHgrow(this, Priority.ALWAYS);
        getChildren().addAll(heading, list);
    }
}
