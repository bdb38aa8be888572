package org.pumpwright.host.ui.control;

import java.util.ArrayList;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Tick;
import org.pumpwright.host.ui.work.Word;

/** The stand's health at a glance: named ticks in a row, each a shape, a colour and a word. JavaFX thread only. */
public final class StandStrip extends HBox {
    private final Saying saying;
    private final ObservableList<Tick> ticks;
    private final List<TickBox> boxes = new ArrayList<>();

    /** Shows these ticks and follows them. */
    public StandStrip(Saying saying, ObservableList<Tick> ticks) {
        this.saying = saying;
        this.ticks = ticks;
        getStyleClass().add("stand-strip");
        ticks.addListener((ListChangeListener<Tick>) change -> show());
        show();
    }

    private void show() {
        while (boxes.size() < ticks.size()) {
            TickBox box = new TickBox();
            boxes.add(box);
            HBox.setHgrow(box, Priority.ALWAYS);
        }
        for (int i = 0; i < ticks.size(); i++) {
            boxes.get(i).show(ticks.get(i));
        }
        getChildren().setAll(List.<Node>copyOf(boxes.subList(0, ticks.size())));
    }

    /** One tick; keeps its nodes while the tick changes many times a second. */
    private final class TickBox extends HBox {
        private final Label name = new Label();
        private final Label state = new Label();
        private final Sign sign = new Sign(Mark.UNKNOWN);
        private Tick shown = new Tick(Word.NONE, Mark.UNKNOWN, Word.NONE);

        TickBox() {
            getStyleClass().add("tick");
            name.getStyleClass().add("tick-name");
            state.getStyleClass().add("tick-state");
            VBox words = new VBox(name, state);
            words.setAlignment(Pos.CENTER_LEFT);
            getChildren().addAll(sign, words);
        }

        void show(Tick tick) {
            if (tick.equals(shown)) {
                return;
            }
            shown = tick;
            sign.markProperty().set(tick.mark());
            name.textProperty().bind(saying.text(tick.name()));
            state.textProperty().bind(saying.text(tick.state()));
        }
    }
}
