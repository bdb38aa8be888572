package org.pumpwright.host.ui.bucket;

import java.util.List;
import java.util.function.UnaryOperator;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableValue;
import org.pumpwright.host.app.paper.PaperKind;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.BucketPaperDesk;
import org.pumpwright.host.ui.work.BucketPlan;
import org.pumpwright.host.ui.work.BucketSetUp;
import org.pumpwright.host.ui.work.BucketStep;
import org.pumpwright.host.ui.work.Word;

/** The six actions of a bucket test: before it, during it, after it. JavaFX thread only. */
final class BucketKeys {
    private final Saying saying;
    private final BucketModel model;
    private final BucketPaperDesk papers;
    private final BenchChoice benches;
    private final ScaleChoice scales;
    private final BooleanBinding weighs;

    BucketKeys(Frame frame, BucketModel model, BucketPaperDesk papers) {
        this.saying = frame.saying();
        this.model = model;
        this.papers = papers;
        benches = new BenchChoice(frame, model);
        scales = new ScaleChoice(frame, model);
        weighs = Bindings.createBooleanBinding(() -> model.stepProperty().get().weighs(), model.stepProperty());
    }

    List<Action> before() {
        BucketSetUp setUp = model.setUp();
        BooleanBinding ready = Bindings.createBooleanBinding(
                () -> setUp.benchProperty().get().isPresent()
                        && !setUp.serialProperty().get().isBlank()
                        && !setUp.technicianProperty().get().isBlank(),
                setUp.benchProperty(),
                setUp.serialProperty(),
                setUp.technicianProperty());
        return List.of(
                Action.of(
                                saying.text("ui.bucket.begin"),
                                () -> model.begin(saying.unitsProperty().get()))
                        .when(ready)
                        .asNext(),
                Action.of(saying.text("ui.bucket.bench"), benches::ask),
                Action.of(saying.text("ui.bucket.flows"), () -> change(BucketPlan::otherFlows)),
                Action.of(saying.text("ui.bucket.runs"), () -> change(BucketPlan::otherRuns)),
                Action.of(saying.text("ui.bucket.seconds"), () -> change(BucketPlan::otherSeconds)),
                Action.of(saying.text("ui.bucket.scale"), scales::ask));
    }

    private void change(UnaryOperator<BucketPlan> change) {
        BucketSetUp setUp = model.setUp();
        setUp.plan(change.apply(setUp.planProperty().get()));
    }

    /** @param typed takes the weight that was typed */
    List<Action> during(Runnable typed) {
        BooleanBinding asked = Bindings.createBooleanBinding(
                () -> model.stepProperty().get().swings() || weighs.get(), model.stepProperty(), weighs);
        ObservableValue<Word> word = model.stepProperty().map(BucketKeys::nextWord);
        BooleanBinding reads = Bindings.createBooleanBinding(() -> weighs.get() && model.scaleIsRead(), weighs);
        return List.of(
                Action.of(saying.text(word), () -> next(typed)).when(asked).asNext(),
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

    private void next(Runnable typed) {
        if (weighs.get()) {
            typed.run();
        } else {
            model.confirm();
        }
    }

    List<Action> after() {
        return List.of(
                Action.of(saying.text("ui.bucket.report"), () -> open(PaperKind.BUCKET))
                        .asNext(),
                Action.of(saying.text("ui.bucket.label"), () -> open(PaperKind.LABEL)),
                Action.of(
                        saying.text("ui.bucket.certificate"),
                        () -> model.resultProperty().get().ifPresent(papers::openCertificate)),
                Action.nothing(),
                Action.nothing(),
                Action.of(saying.text("ui.bucket.again"), model::again));
    }

    private void open(PaperKind kind) {
        model.resultProperty()
                .get()
                .ifPresent(test -> papers.open(
                        kind,
                        test,
                        saying.languageProperty().get(),
                        saying.unitsProperty().get()));
    }
}
