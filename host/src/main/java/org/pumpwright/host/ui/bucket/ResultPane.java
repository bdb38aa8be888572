package org.pumpwright.host.ui.bucket;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.work.BucketDesk;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.KWords;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.Word;

/**
 * What a bucket test gives: K with its expanded uncertainty, large in the units of the moment and below in the others, whether it is
 * accepted and why, and where it is on record. JavaFX thread only.
 */
final class ResultPane {
    private final Saying saying;
    private final BucketModel model;
    private final VBox node = new VBox();
    private final ObservableList<Row> checks = FXCollections.observableArrayList();
    private final Sign sign = new Sign(Mark.UNKNOWN);

    ResultPane(Saying saying, BucketModel model) {
        this.saying = saying;
        this.model = model;
        node.getStyleClass().add("bucket-result");
        Label finding = words("headline", saying.text(model.resultProperty().map(ResultPane::finding)));
        HBox.setHgrow(finding, Priority.ALWAYS);
        HBox head = new HBox(sign, finding);
        head.getStyleClass().add("head");
        head.setAlignment(Pos.TOP_LEFT);
        Label record = words("bucket-record", saying.text(model.resultProperty().map(ResultPane::onRecord)));
        record.setId("bucket-record");
        RowList list = new RowList(saying, checks);
        VBox.setVgrow(list, Priority.ALWAYS);
        model.resultProperty().addListener((observed, old, now) -> show(now));
        node.getChildren()
                .addAll(
                        line("bucket-k", units -> units),
                        line("bucket-k-other", ResultPane::other),
                        head,
                        list,
                        record);
    }

    /** Which units a line is in, by those of the moment. */
    private interface Choice {
        UnitSystem of(UnitSystem now);
    }

    private static UnitSystem other(UnitSystem now) {
        return now == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
    }

    private HBox line(String style, Choice units) {
        ObservableValue<Optional<KWords>> k = Bindings.createObjectBinding(
                () -> model.resultProperty()
                        .get()
                        .map(kept -> KWords.of(
                                kept.record().result().single(),
                                units.of(saying.unitsProperty().get()))),
                model.resultProperty(),
                saying.unitsProperty());
        Label value = figure(style, k.map(words -> words.map(KWords::value).orElse("")));
        value.setId(style);
        Label uncertainty = figure(
                style + "-u", k.map(words -> words.map(KWords::uncertainty).orElse("")));
        uncertainty.setId(style + "-u");
        Label unit = words(
                "bucket-unit",
                saying.text(k.map(words -> words.map(KWords::unit).orElse(Word.NONE))));
        HBox line = new HBox(value, uncertainty, unit);
        line.getStyleClass().add("bucket-k-line");
        return line;
    }

    private static Label figure(String style, ObservableValue<String> text) {
        Label label = new Label();
        label.getStyleClass().addAll(style, "data");
        label.setMinWidth(Label.USE_PREF_SIZE);
        label.textProperty().bind(text);
        return label;
    }

    private static Label words(String style, ObservableValue<String> text) {
        Label label = new Label();
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        label.textProperty().bind(text);
        return label;
    }

    private static Word finding(Optional<BucketDesk.Kept> kept) {
        return kept.map(BucketDesk.Kept::record).map(ResultPane::finding).orElse(Word.NONE);
    }

    private static Word finding(BucketRecord record) {
        String key = record.result().accepted() ? "ui.bucket.accepted" : "ui.bucket.not_accepted";
        return Word.of(
                record.practice() ? key + ".practice" : key,
                percent("%.2f", record.result().single().relativeExpandedUncertainty()),
                percent("%.1f", record.result().inService()));
    }

    private static String percent(String pattern, double share) {
        return String.format(Locale.ROOT, pattern, 100 * share);
    }

    private static Word onRecord(Optional<BucketDesk.Kept> kept) {
        return kept.map(test -> test.entry()
                        .map(entry -> Word.of("ui.bucket.on_record", entry))
                        .orElseGet(() -> Word.of("ui.bucket.kept", test.record().id())))
                .orElse(Word.NONE);
    }

    private void show(Optional<BucketDesk.Kept> kept) {
        sign.markProperty()
                .set(kept.map(each -> each.record().result().accepted() ? Mark.GOOD : Mark.BAD)
                        .orElse(Mark.UNKNOWN));
        checks.setAll(kept.map(each -> rows(each.record())).orElse(List.of()));
    }

    private static List<Row> rows(BucketRecord record) {
        return record.result().checks().stream()
                .map(check -> new Row(
                        Word.stored(check.name()),
                        check.holds() ? Mark.GOOD : Mark.BAD,
                        Word.stored(check.words()),
                        Word.NONE))
                .toList();
    }

    Node node() {
        return node;
    }
}
