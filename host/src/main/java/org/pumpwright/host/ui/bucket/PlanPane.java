package org.pumpwright.host.ui.bucket;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.bucket.BucketBench;
import org.pumpwright.host.calibrate.Weighing;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.BucketPlan;
import org.pumpwright.host.ui.work.BucketSetUp;
import org.pumpwright.host.ui.work.Word;

/**
 * The plan of a bucket test, before it begins: which meter, by whom, how many flows and runs, on which bench, where the weights come from.
 * JavaFX thread only.
 */
final class PlanPane {
    private static final double LITRES_PER_M3 = 1000;

    private final Saying saying;
    private final VBox node = new VBox();
    private final GridPane facts = new GridPane();

    PlanPane(Saying saying, BucketModel model) {
        this.saying = saying;
        BucketSetUp setUp = model.setUp();
        node.getStyleClass().add("bucket-plan");
        Field serial = new Field(saying.text("ui.bucket.serial"), "bucket-serial");
        serial.text().textProperty().bindBidirectional(setUp.serialProperty());
        Field technician = new Field(saying.text("ui.bucket.technician"), "bucket-technician");
        technician.text().textProperty().bindBidirectional(setUp.technicianProperty());
        HBox fields = new HBox(serial, technician);
        fields.getStyleClass().add("field-row");
        HBox.setHgrow(serial, Priority.ALWAYS);
        HBox.setHgrow(technician, Priority.ALWAYS);
        facts.getStyleClass().add("bucket-facts");
        fact("ui.bucket.fact.plan", setUp.planProperty().map(PlanPane::words));
        fact("ui.bucket.fact.time", setUp.planProperty().map(PlanPane::minutes));
        fact(
                "ui.bucket.fact.bench",
                setUp.benchProperty().map(chosen -> chosen.map(PlanPane::words).orElse(Word.of("ui.bucket.no_bench"))));
        fact(
                "ui.bucket.fact.weights",
                Bindings.createObjectBinding(
                        () -> weights(model),
                        model.scales().chosenProperty(),
                        model.setUp().benchProperty(),
                        model.stepProperty()));
        fact("", model.scales().showsProperty());
        node.getChildren().addAll(fields, facts);
    }

    private void fact(String key, ObservableValue<Word> value) {
        int row = facts.getRowCount();
        if (!key.isEmpty()) {
            Label name = new Label();
            name.getStyleClass().add("fact-name");
            name.setMinWidth(Label.USE_PREF_SIZE);
            name.textProperty().bind(saying.text(key));
            GridPane.setValignment(name, VPos.TOP);
            facts.add(name, 0, row);
        }
        Label words = new Label();
        words.getStyleClass().add("bucket-fact");
        words.setWrapText(true);
        words.setMinHeight(Label.USE_PREF_SIZE);
        words.textProperty().bind(saying.text(value));
        GridPane.setValignment(words, VPos.TOP);
        GridPane.setHgrow(words, Priority.ALWAYS);
        facts.add(words, 1, row);
    }

    private static Word weights(BucketModel model) {
        if (model.simulated()) {
            return Word.of("ui.bucket.weights.simulated");
        }
        return model.scales()
                .chosenProperty()
                .get()
                .map(scale ->
                        Word.of("ui.bucket.weights.scale", scale.settings().name(), scale.port()))
                .orElse(Word.of("ui.bucket.weights.typed"));
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
