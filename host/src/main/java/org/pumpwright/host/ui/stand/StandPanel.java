package org.pumpwright.host.ui.stand;

import java.util.List;
import java.util.Locale;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.ReadingTile;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.work.LinkState;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Reading;
import org.pumpwright.host.ui.work.StandWatchModel;
import org.pumpwright.host.ui.work.Word;

/** Which stand it is, how the window stands with it, and a tile for each channel, with a dash while it is not read. JavaFX thread only. */
final class StandPanel extends VBox {
    private final Saying saying;
    private final StandWatchModel watch;
    private final HBox tiles = new HBox();

    StandPanel(Saying saying, StandWatchModel watch) {
        this.saying = saying;
        this.watch = watch;
        getStyleClass().add("stand-panel");
        tiles.getStyleClass().add("reading-tiles");
        getChildren().addAll(head(), tiles);
        watch.readings().addListener((ListChangeListener<Reading>) change -> show());
        watch.standProperty().addListener((observed, old, now) -> show());
        show();
    }

    private HBox head() {
        Label name = new Label();
        name.getStyleClass().addAll("stand-name", "data");
        name.setMinWidth(USE_PREF_SIZE);
        name.textProperty().bind(watch.standProperty().map(StandDescription::title));
        Sign sign = new Sign(Mark.UNKNOWN);
        sign.markProperty().bind(watch.linkProperty().map(StandPanel::mark));
        Label state = new Label();
        state.setId("stand-state");
        state.getStyleClass().add("stand-state");
        ObservableValue<Word> word = watch.linkProperty()
                .map(link -> Word.of("ui.stand.link." + link.name().toLowerCase(Locale.ROOT)));
        state.textProperty().bind(saying.text(word));
        HBox head = new HBox(name, sign, state);
        head.getStyleClass().add("stand-head");
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    private static Mark mark(LinkState link) {
        return switch (link) {
            case HEARD -> Mark.GOOD;
            case LOST -> Mark.BAD;
            case OFF, REACHING -> Mark.UNKNOWN;
        };
    }

    private void show() {
        List<Reading> read = watch.readings();
        List<Reading> now = read.isEmpty() ? watch.unread() : read;
        if (tiles.getChildren().size() != now.size()) {
            tiles.getChildren().setAll(now.stream().map(this::tile).toList());
            return;
        }
        for (int i = 0; i < now.size(); i++) {
            ((ReadingTile) tiles.getChildren().get(i)).readingProperty().set(now.get(i));
        }
    }

    private ReadingTile tile(Reading reading) {
        ReadingTile tile = new ReadingTile(saying, reading);
        tile.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(tile, Priority.ALWAYS);
        return tile;
    }
}
