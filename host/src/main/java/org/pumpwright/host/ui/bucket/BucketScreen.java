package org.pumpwright.host.ui.bucket;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.bucket.BucketCalibration;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Cue;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.control.Palette;
import org.pumpwright.host.ui.control.RepeatDots;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.BucketPlan;
import org.pumpwright.host.ui.work.BucketStep;
import org.pumpwright.host.ui.work.FlowRuns;
import org.pumpwright.host.ui.work.Word;

/** The guided bucket test: what to do in one sentence above, the plan, the count or K at the left, how the runs repeat at the right. JavaFX thread only. */
public final class BucketScreen implements Screen {
    private final Saying saying;
    private final BucketModel model;
    private final BenchChoice benches;
    private final WorkPane work;
    private final VBox node = new VBox();
    private final StackPane left = new StackPane();
    private final Node planPane;
    private final Node resultPane;
    private final ObservableList<Action> actions = FXCollections.observableArrayList();
    private final BooleanBinding weighs;

    /** Guides tests by this model. */
    public BucketScreen(Frame frame, BucketModel model, ObservableBooleanValue dark) {
        this.saying = frame.saying();
        this.model = model;
        benches = new BenchChoice(frame, model);
        work = new WorkPane(saying, model);
        planPane = new PlanPane(saying, model).node();
        resultPane = new ResultPane(saying, model).node();
        weighs = Bindings.createBooleanBinding(() -> model.stepProperty().get().weighs(), model.stepProperty());
        build(dark);
        model.stepProperty().addListener((observed, old, now) -> {
            show(old, now);
            cue(frame, now);
        });
        show(BucketStep.RESULT, model.stepProperty().get());
    }

    private static void cue(Frame frame, BucketStep now) {
        if (now.swings()) {
            frame.cue(Cue.SETTLED);
        } else if (now == BucketStep.GROSS) {
            frame.cue(Cue.STEP);
        } else if (now == BucketStep.RESULT) {
            frame.cue(Cue.VERDICT);
        }
    }

    private void build(ObservableBooleanValue dark) {
        node.getStyleClass().add("bucket-screen");
        Label sentence = new Label();
        sentence.setId("bucket-sentence");
        sentence.getStyleClass().add("bucket-sentence");
        sentence.setWrapText(true);
        sentence.setMinHeight(Label.USE_PREF_SIZE);
        sentence.textProperty().bind(saying.text(model.sentenceProperty()));
        HBox.setHgrow(sentence, Priority.ALWAYS);
        sentence.setMaxWidth(Double.MAX_VALUE);
        Label counter = new Label();
        counter.getStyleClass().add("bucket-counter");
        counter.setMinWidth(Label.USE_PREF_SIZE);
        counter.textProperty()
                .bind(saying.text(
                        Bindings.createObjectBinding(this::counted, model.runProperty(), model.stepProperty())));
        HBox head = new HBox(sentence, counter);
        head.getStyleClass().add("bucket-head");
        RepeatDots dots = new RepeatDots();
        dots.paletteProperty()
                .bind(Bindings.createObjectBinding(() -> dark.get() ? Palette.DARK : Palette.LIGHT, dark));
        model.flows().addListener((ListChangeListener<FlowRuns>) change -> showDots(dots));
        showDots(dots);
        Label caption = new Label();
        caption.getStyleClass().add("bucket-caption");
        caption.setWrapText(true);
        caption.textProperty().bind(saying.text("ui.bucket.dots"));
        VBox.setVgrow(dots, Priority.ALWAYS);
        VBox right = new VBox(caption, dots);
        right.getStyleClass().add("bucket-right");
        HBox.setHgrow(left, Priority.ALWAYS);
        HBox body = new HBox(left, right);
        body.getStyleClass().add("bucket-body");
        body.setMinHeight(0);
        VBox.setVgrow(body, Priority.ALWAYS);
        node.getChildren().addAll(head, body);
    }

    private Word counted() {
        boolean going =
                model.stepProperty().get().underWay() && model.runProperty().get() > 0;
        return going
                ? Word.of(
                        "ui.bucket.run",
                        model.runProperty().get(),
                        model.planProperty().get().total())
                : Word.NONE;
    }

    private void showDots(RepeatDots dots) {
        dots.lanesProperty()
                .set(model.flows().stream()
                        .map(flow ->
                                new RepeatDots.Lane(flow.duty().print(), flow.k(), flow.planned(), flow.gateShare()))
                        .toList());
    }

    private void show(BucketStep before, BucketStep now) {
        if (now == BucketStep.PLAN) {
            left.getChildren().setAll(planPane);
            planActions();
        } else if (now == BucketStep.RESULT) {
            left.getChildren().setAll(resultPane);
            resultActions();
        } else if (!before.underWay()) {
            left.getChildren().setAll(work.node());
            workActions();
        } else {
            return;
        }
        // Never left on a field that is gone: STOP's key comes in by the node that has it.
        node.requestFocus();
    }

    private void planActions() {
        BooleanBinding ready = Bindings.createBooleanBinding(
                () -> model.benchProperty().get().isPresent()
                        && !model.serialProperty().get().isBlank()
                        && !model.technicianProperty().get().isBlank(),
                model.benchProperty(),
                model.serialProperty(),
                model.technicianProperty());
        actions.setAll(
                Action.of(
                                saying.text("ui.bucket.begin"),
                                () -> model.begin(saying.unitsProperty().get()))
                        .when(ready)
                        .asNext(),
                Action.of(saying.text("ui.bucket.bench"), benches::ask),
                Action.of(saying.text("ui.bucket.flows"), () -> change(plan().otherFlows())),
                Action.of(saying.text("ui.bucket.runs"), () -> change(plan().otherRuns())),
                Action.of(saying.text("ui.bucket.seconds"), () -> change(plan().otherSeconds())),
                Action.nothing());
    }

    private BucketPlan plan() {
        return model.planProperty().get();
    }

    private void change(BucketPlan other) {
        model.plan(other);
    }

    private void workActions() {
        BooleanBinding asked = Bindings.createBooleanBinding(
                () -> model.stepProperty().get().swings() || weighs.get(), model.stepProperty(), weighs);
        ObservableValue<Word> word = model.stepProperty().map(BucketScreen::nextWord);
        BooleanBinding reads = Bindings.createBooleanBinding(() -> weighs.get() && model.scaleIsRead(), weighs);
        actions.setAll(
                Action.of(saying.text(word), this::next).when(asked).asNext(),
                Action.of(saying.text("ui.bucket.read_scale"), model::confirm).when(reads),
                Action.nothing(),
                Action.nothing(),
                Action.nothing(),
                Action.of(saying.text("ui.bucket.end"), model::end));
    }

    private static Word nextWord(BucketStep step) {
        return Word.of(
                switch (step) {
                    case SWING_IN -> "ui.bucket.is_in";
                    case SWING_OUT -> "ui.bucket.is_out";
                    case TARE, GROSS -> "ui.bucket.take_weight";
                    default -> "ui.bucket.wait";
                });
    }

    private void next() {
        if (weighs.get()) {
            work.takeWeight();
        } else {
            model.confirm();
        }
    }

    private void resultActions() {
        actions.setAll(
                Action.of(saying.text("ui.bucket.report"), () -> model.open(BucketCalibration.Kept::page))
                        .asNext(),
                Action.of(saying.text("ui.bucket.label"), () -> model.open(BucketCalibration.Kept::label)),
                Action.of(saying.text("ui.bucket.certificate"), () -> model.open(BucketCalibration.Kept::certificate)),
                Action.nothing(),
                Action.nothing(),
                Action.of(saying.text("ui.bucket.again"), model::again));
    }

    @Override
    public Moment moment() {
        return Moment.BUCKET;
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public ObservableList<Action> actions() {
        return actions;
    }

    @Override
    public void shown() {
        if (model.benchProperty().get().isEmpty()) {
            model.findBenches(all -> {});
        }
    }

    @Override
    public void scanned(String text) {
        if (model.stepProperty().get() == BucketStep.PLAN) {
            model.serialProperty().set(text);
        }
    }
}
