package org.pumpwright.host.ui.bucket;

import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.FillBar;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.BucketProgress;
import org.pumpwright.host.ui.work.BucketProgress.Live;
import org.pumpwright.host.ui.work.BucketSetUp;
import org.pumpwright.host.ui.work.BucketStep;
import org.pumpwright.host.ui.work.Word;

/**
 * A bucket test under way: the count as large as it goes, how far the run has come and its flow below it; or a field for the weight when
 * one is wanted. JavaFX thread only.
 */
final class WorkPane {
    private final BucketModel model;
    private final VBox node = new VBox();
    private final Field grams;

    WorkPane(Saying saying, BucketModel model) {
        this.model = model;
        node.getStyleClass().add("bucket-work");
        grams = new Field(saying.text("ui.bucket.grams"), "bucket-grams");
        grams.getStyleClass().add("bucket-grams");
        grams.text().setOnAction(entered -> takeWeight());
        VBox count = count(saying, model);
        VBox weight = weight(saying, model);
        show(count, model.stepProperty().map(step -> !step.weighs() && step != BucketStep.SCALE));
        show(weight, model.stepProperty().map(BucketStep::weighs));
        model.stepProperty().addListener((observed, old, now) -> {
            grams.text().clear();
            if (now.weighs()) {
                grams.text().requestFocus();
            }
        });
        node.getChildren().addAll(count, weight);
    }

    private static void show(Node part, ObservableValue<Boolean> when) {
        part.visibleProperty().bind(when);
        part.managedProperty().bind(when);
    }

    private static VBox count(Saying saying, BucketModel model) {
        BucketProgress progress = model.progress();
        Label pulses = figure("bucket-pulses");
        pulses.setId("bucket-pulses");
        pulses.textProperty()
                .bind(progress.liveProperty().map(live -> String.format(Locale.ROOT, "%.0f", live.pulses())));
        Label unit = new Label();
        unit.getStyleClass().add("bucket-unit");
        unit.textProperty().bind(saying.text("ui.bucket.pulses"));
        HBox line = new HBox(pulses, unit);
        line.getStyleClass().add("bucket-count");
        BucketSetUp setUp = model.setUp();
        FillBar bar = new FillBar();
        bar.shareProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> progress.liveProperty().get().seconds()
                                / setUp.planProperty().get().seconds(),
                        progress.liveProperty(),
                        setUp.planProperty()));
        Label flow = figure("bucket-flow");
        flow.textProperty()
                .bind(saying.text(
                        "ui.bucket.live",
                        flow(saying, progress),
                        progress.liveProperty().map(live -> String.format(Locale.ROOT, "%.0f", live.seconds())),
                        setUp.planProperty().map(plan -> plan.seconds())));
        VBox count = new VBox(line, bar, flow);
        count.getStyleClass().add("bucket-counting");
        return count;
    }

    private VBox weight(Saying saying, BucketModel model) {
        Label hint = words("bucket-hint");
        hint.textProperty()
                .bind(saying.text(model.stepProperty()
                        .map(step -> Word.of(model.scaleIsRead() ? "ui.bucket.hint.scale" : "ui.bucket.hint.typed"))));
        Label shown = words("bucket-hint");
        shown.textProperty().bind(saying.text(model.scales().showsProperty()));
        Label complaint = words("bucket-complaint");
        complaint.textProperty().bind(saying.text(model.complaintProperty()));
        VBox weight = new VBox(grams, complaint, hint, shown);
        weight.getStyleClass().add("bucket-weight");
        return weight;
    }

    private static Label words(String style) {
        Label label = new Label();
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        label.managedProperty().bind(label.textProperty().isNotEmpty());
        return label;
    }

    private static Label figure(String style) {
        Label label = new Label();
        label.getStyleClass().addAll(style, "data");
        return label;
    }

    private static ObservableValue<String> flow(Saying saying, BucketProgress progress) {
        return Bindings.createStringBinding(
                () -> print(
                        progress.liveProperty().get(), saying.unitsProperty().get()),
                progress.liveProperty(),
                saying.unitsProperty());
    }

    private static String print(Live live, UnitSystem units) {
        return new FlowRate(live.m3PerSecond()).print(units);
    }

    void takeWeight() {
        model.weight(grams.text().getText());
    }

    Node node() {
        return node;
    }
}
