package org.pumpwright.host.ui.control;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Reading;

/** One channel, its figure large, below it what its sensor can read. JavaFX thread only. */
public final class ReadingTile extends VBox {
    private static final PseudoClass BAD = PseudoClass.getPseudoClass("bad");

    private final ObjectProperty<Reading> reading = new SimpleObjectProperty<>();

    /** Shows a reading. */
    public ReadingTile(Saying saying, Reading first) {
        reading.set(first);
        getStyleClass().add("reading-tile");
        Label name = new Label();
        name.getStyleClass().add("reading-name");
        name.setWrapText(true);
        Label figure = new Label();
        figure.getStyleClass().add("reading-value");
        Label unit = new Label();
        unit.getStyleClass().add("reading-unit");
        HBox line = new HBox(figure, unit);
        line.getStyleClass().add("reading-figure");
        Label limits = new Label();
        limits.getStyleClass().addAll("reading-limits", "data");
        limits.setWrapText(true);
        getChildren().addAll(name, line, limits);
        name.textProperty().bind(saying.text(reading.map(Reading::name)));
        limits.textProperty().bind(saying.text(reading.map(Reading::limits)));
        ObservableValue<String> value = saying.text(reading.map(Reading::value));
        figure.textProperty().bind(value.map(ReadingTile::figure));
        unit.textProperty()
                .bind(value.map(text -> text.substring(figure(text).length()).strip()));
        reading.addListener((observed, old, now) -> mark(now.mark()));
        mark(first.mark());
    }

    /** What it shows. */
    public ObjectProperty<Reading> readingProperty() {
        return reading;
    }

    /** The number of a quantity, which is shown larger than its unit; all of it where there is none. */
    private static String figure(String value) {
        int space = value.indexOf(' ');
        boolean number = !value.isEmpty() && (Character.isDigit(value.charAt(0)) || value.charAt(0) == '-');
        return number && space > 0 ? value.substring(0, space) : value;
    }

    private void mark(Mark now) {
        pseudoClassStateChanged(BAD, now == Mark.BAD);
    }
}
