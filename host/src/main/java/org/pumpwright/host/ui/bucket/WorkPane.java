package org.pumpwright.host.ui.bucket;

import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.FillBar;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.BucketModel.Live;
import org.pumpwright.host.ui.work.BucketStep;

/** A bucket test under way: the count as large as it goes, how far the run has come and its flow below it, and a field for the weight when one is wanted. JavaFX thread only. */
final class WorkPane {
    private final BucketModel model;
    private final VBox node = new VBox();
    private final Field grams;

    WorkPane(Saying saying, BucketModel model) {
        this.model = model;
        node.getStyleClass().add("bucket-work");
        Label pulses = figure("bucket-pulses");
        pulses.setId("bucket-pulses");
        pulses.textProperty().bind(model.liveProperty().map(live -> String.format(Locale.ROOT, "%.0f", live.pulses())));
        Label unit = new Label();
        unit.getStyleClass().add("bucket-unit");
        unit.textProperty().bind(saying.text("ui.bucket.pulses"));
        HBox count = new HBox(pulses, unit);
        count.getStyleClass().add("bucket-count");
        Label flow = figure("bucket-flow");
        flow.textProperty().bind(saying.text("ui.bucket.live", flow(saying, model), seconds(model)));
        FillBar bar = new FillBar();
        bar.shareProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> model.liveProperty().get().seconds()
                                / model.planProperty().get().seconds(),
                        model.liveProperty(),
                        model.planProperty()));
        grams = new Field(saying.text("ui.bucket.grams"), "bucket-grams");
        grams.getStyleClass().add("bucket-grams");
        grams.text().setOnAction(entered -> takeWeight());
        Label complaint = new Label();
        complaint.getStyleClass().add("bucket-complaint");
        complaint.setWrapText(true);
        complaint.textProperty().bind(saying.text(model.complaintProperty()));
        HBox weight = new HBox(grams, complaint);
        weight.getStyleClass().add("field-row");
        HBox.setHgrow(complaint, Priority.ALWAYS);
        ObservableValue<Boolean> weighs = model.stepProperty().map(BucketStep::weighs);
        weight.visibleProperty().bind(weighs);
        weight.managedProperty().bind(weighs);
        count.visibleProperty().bind(weighs.map(now -> !now));
        count.managedProperty().bind(weighs.map(now -> !now));
        flow.visibleProperty().bind(weighs.map(now -> !now));
        flow.managedProperty().bind(weighs.map(now -> !now));
        bar.visibleProperty().bind(weighs.map(now -> !now));
        bar.managedProperty().bind(weighs.map(now -> !now));
        model.stepProperty().addListener((observed, old, now) -> {
            grams.text().clear();
            if (now.weighs()) {
                grams.text().requestFocus();
            }
        });
        node.getChildren().addAll(count, bar, flow, weight);
    }

    private static Label figure(String style) {
        Label label = new Label();
        label.getStyleClass().addAll(style, "data");
        return label;
    }

    private static ObservableValue<String> flow(Saying saying, BucketModel model) {
        return Bindings.createStringBinding(
                () -> print(model.liveProperty().get(), saying.unitsProperty().get()),
                model.liveProperty(),
                saying.unitsProperty());
    }

    private static String print(Live live, UnitSystem units) {
        return new FlowRate(live.m3PerSecond()).print(units);
    }

    private static ObservableValue<String> seconds(BucketModel model) {
        return model.liveProperty().map(live -> String.format(Locale.ROOT, "%.0f", live.seconds()));
    }

    void takeWeight() {
        model.weight(grams.text().getText());
    }

    Node node() {
        return node;
    }
}
