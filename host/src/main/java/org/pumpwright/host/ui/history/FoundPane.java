package org.pumpwright.host.ui.history;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.work.HistoryModel;
import org.pumpwright.host.ui.work.HistorySearch;
import org.pumpwright.host.ui.work.Word;

/** One field to look for anything, and what was found. JavaFX thread only. */
final class FoundPane {
    private final Saying saying;
    private final HistoryModel model;
    private final RowList list;
    private final VBox node;

    FoundPane(Saying saying, HistoryModel model) {
        this.saying = saying;
        this.model = model;
        list = new RowList(saying, model.search().rows());
        node = build(model.search(), new Field(saying.text("ui.history.look_for"), "history-text"));
    }

    private VBox build(HistorySearch search, Field field) {
        field.text().textProperty().bindBidirectional(search.textProperty());
        field.text().setOnAction(entered -> list.requestFocus());
        search.textProperty().addListener((observed, old, now) -> search.search());
        list.setId("history-list");
        list.setOnKeyPressed(press -> {
            if (press.getCode() == KeyCode.ENTER) {
                openSelected();
            }
        });
        list.setOnMouseClicked(click -> {
            if (click.getClickCount() == 2) {
                openSelected();
            }
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        HBox.setHgrow(field, Priority.ALWAYS);
        Label verdict = chip(search.askedProperty().map(asked -> Word.of("ui.history.asked." + asked.style())));
        Label since = chip(search.sinceProperty().map(span -> Word.of("ui.history.since." + span.style())));
        HBox top = new HBox(field, verdict, since);
        top.getStyleClass().add("history-top");
        Label headline = new Label();
        headline.getStyleClass().add("headline");
        headline.setWrapText(true);
        headline.textProperty().bind(saying.text(search.headlineProperty()));
        VBox pane = new VBox(top, headline, list);
        pane.getStyleClass().add("history-list");
        return pane;
    }

    private Label chip(ObservableValue<Word> word) {
        Label chip = new Label();
        chip.getStyleClass().add("chip");
        chip.setMinWidth(Label.USE_PREF_SIZE);
        chip.textProperty().bind(saying.text(word));
        return chip;
    }

    /** What was found; the line that is chosen is opened. */
    RowList list() {
        return list;
    }

    void openSelected() {
        model.open(list.getSelectionModel().getSelectedIndex());
    }

    Node node() {
        return node;
    }
}
