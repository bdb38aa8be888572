package org.pumpwright.host.ui.bucket;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.bucket.BucketBench;
import org.pumpwright.host.calibrate.Weighing;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.BucketPlan;
import org.pumpwright.host.ui.work.Word;

/** The plan of a bucket test, before it begins: which meter, by whom, on which bench, how many flows and runs. JavaFX thread only. */
final class PlanPane {
    private static final double LITRES_PER_M3 = 1000;

    private final VBox node = new VBox();

    PlanPane(Saying saying, BucketModel model) {
        node.getStyleClass().add("bucket-plan");
        Field serial = new Field(saying.text("ui.bucket.serial"), "bucket-serial");
        serial.text().textProperty().bindBidirectional(model.serialProperty());
        Field technician = new Field(saying.text("ui.bucket.technician"), "bucket-technician");
        technician.text().textProperty().bindBidirectional(model.technicianProperty());
        HBox fields = new HBox(serial, technician);
        fields.getStyleClass().add("field-row");
        HBox.setHgrow(serial, Priority.ALWAYS);
        HBox.setHgrow(technician, Priority.ALWAYS);
        Label bench = line("bucket-fact");
        bench.textProperty()
                .bind(saying.text(model.benchProperty()
                        .map(chosen -> chosen.map(PlanPane::words).orElse(Word.of("ui.bucket.no_bench")))));
        Label plan = line("bucket-plan-line");
        plan.textProperty().bind(saying.text(model.planProperty().map(PlanPane::words)));
        Label flows = line("bucket-fact");
        flows.textProperty().bind(saying.text(model.planProperty().map(PlanPane::minutes)));
        node.getChildren().addAll(fields, plan, flows, bench);
    }

    private static Label line(String style) {
        Label line = new Label();
        line.getStyleClass().add(style);
        line.setWrapText(true);
        return line;
    }

    private static Word words(BucketBench bench) {
        double litres = bench.sheet().test().bench().method() instanceof Weighing weighing
                ? weighing.bucketM3() * LITRES_PER_M3
                : 0;
        return Word.of(
                "ui.bucket.on_bench",
                bench.name(),
                Math.round(litres),
                Word.stored(bench.sheet().test().liquidName()));
    }

    private static Word words(BucketPlan plan) {
        return Word.of("ui.bucket.plan", plan.duties().size(), plan.runs(), plan.seconds());
    }

    /** A run takes its seconds and about as long again for settling, swinging and weighing. */
    private static Word minutes(BucketPlan plan) {
        return Word.of("ui.bucket.minutes", plan.total(), Math.max(1, plan.total() * (plan.seconds() + 60) / 60));
    }

    Node node() {
        return node;
    }
}
