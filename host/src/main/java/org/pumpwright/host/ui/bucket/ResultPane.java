package org.pumpwright.host.ui.bucket;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.work.BucketDesk;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.Word;

/** What a bucket test gives: K per gallon and per litre, its uncertainty, whether it is accepted and why. JavaFX thread only. */
final class ResultPane {
    private final VBox node = new VBox();
    private final ObservableList<Row> checks = FXCollections.observableArrayList();
    private final Sign sign = new Sign(Mark.UNKNOWN);

    ResultPane(Saying saying, BucketModel model) {
        node.getStyleClass().add("bucket-result");
        Label gallon = figure("bucket-k");
        gallon.setId("bucket-k");
        gallon.textProperty().bind(model.resultProperty().map(kept -> k(kept, "%.1f", KFactor::pulsesPerUsGallon)));
        Label perGallon = unit(saying, "ui.bucket.per_gallon");
        Label litre = figure("bucket-k-litre");
        litre.textProperty().bind(model.resultProperty().map(kept -> k(kept, "%.2f", KFactor::pulsesPerLitre)));
        Label perLitre = unit(saying, "ui.bucket.per_litre");
        HBox k = new HBox(gallon, perGallon);
        k.getStyleClass().add("bucket-k-line");
        HBox second = new HBox(litre, perLitre);
        second.getStyleClass().add("bucket-k-line");
        Label finding = new Label();
        finding.getStyleClass().add("headline");
        finding.setWrapText(true);
        finding.setMinHeight(Label.USE_PREF_SIZE);
        finding.textProperty().bind(saying.text(model.resultProperty().map(ResultPane::finding)));
        HBox.setHgrow(finding, Priority.ALWAYS);
        HBox head = new HBox(sign, finding);
        head.getStyleClass().add("head");
        head.setAlignment(Pos.CENTER_LEFT);
        RowList list = new RowList(saying, checks);
        VBox.setVgrow(list, Priority.ALWAYS);
        model.resultProperty().addListener((observed, old, now) -> show(now));
        node.getChildren().addAll(new VBox(k, second), head, list);
    }

    private static Label figure(String style) {
        Label label = new Label();
        label.getStyleClass().addAll(style, "data");
        label.setMinWidth(Label.USE_PREF_SIZE);
        return label;
    }

    private static Label unit(Saying saying, String key) {
        Label label = new Label();
        label.getStyleClass().add("bucket-unit");
        label.setWrapText(true);
        label.textProperty().bind(saying.text(key));
        return label;
    }

    private static String k(
            Optional<BucketDesk.Kept> kept, String pattern, java.util.function.ToDoubleFunction<KFactor> shown) {
        return kept.map(each -> new KFactor(each.record().result().single().pulsesPerM3()))
                .map(k -> String.format(Locale.ROOT, pattern, shown.applyAsDouble(k)))
                .orElse("");
    }

    private static Word finding(Optional<BucketDesk.Kept> kept) {
        return kept.map(BucketDesk.Kept::record).map(ResultPane::finding).orElse(Word.NONE);
    }

    private static Word finding(BucketRecord record) {
        String key = record.result().accepted() ? "ui.bucket.accepted" : "ui.bucket.not_accepted";
        return Word.of(
                record.practice() ? key + ".practice" : key,
                String.format(
                        Locale.ROOT, "%.2f", 100 * record.result().single().relativeExpandedUncertainty()),
                String.format(Locale.ROOT, "%.1f", 100 * record.result().inService()));
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
