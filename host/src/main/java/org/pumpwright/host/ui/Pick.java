package org.pumpwright.host.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.collections.FXCollections;
import javafx.scene.input.MouseEvent;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.work.Row;

/** Asks to pick one of a list that may be long: up and down, and F1 or a second press takes it. JavaFX thread only. */
public final class Pick {
    private static final int LINES = 6;
    private static final double EM_PER_LINE = 3.7;

    private Pick() {}

    /**
     * Asks.
     *
     * @param key of its title; the text below it has the same key with {@code .text}
     * @param picked takes the place in the list, from 0
     */
    public static void one(Frame frame, String key, List<Row> rows, IntConsumer picked) {
        Saying saying = frame.saying();
        RowList list = new RowList(saying, FXCollections.observableArrayList(rows));
        list.setId("pick");
        list.getStyleClass().add("pick");
        list.setStyle("-fx-pref-height: %sem;".formatted(EM_PER_LINE * Math.min(LINES, Math.max(2, rows.size()))));
        list.getSelectionModel().select(0);
        Action take = Action.of(saying.text("ui.pick.take"), () -> {
                    int place = list.getSelectionModel().getSelectedIndex();
                    if (place >= 0) {
                        picked.accept(place);
                    }
                })
                .asNext();
        list.addEventHandler(MouseEvent.MOUSE_CLICKED, click -> {
            int place = list.getSelectionModel().getSelectedIndex();
            if (click.getClickCount() == 2 && place >= 0) {
                frame.withdraw();
                picked.accept(place);
            }
        });
        frame.ask(new Prompt(
                saying.text(key),
                saying.text(key + ".text"),
                Optional.of(list),
                List.of(
                        take,
                        Action.nothing(),
                        Action.nothing(),
                        Action.nothing(),
                        Action.nothing(),
                        Action.of(saying.text("ui.cancel"), () -> {}))));
        list.requestFocus();
    }
}
