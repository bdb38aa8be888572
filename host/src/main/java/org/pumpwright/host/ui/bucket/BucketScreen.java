package org.pumpwright.host.ui.bucket;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableBooleanValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Cue;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.BucketPaperDesk;
import org.pumpwright.host.ui.work.BucketStep;
import org.pumpwright.host.ui.work.Word;

/** The guided bucket test: what to do in one sentence above, the plan, the count or K at the left, how the runs repeat at the right. JavaFX thread only. */
public final class BucketScreen implements Screen {
    private final Saying saying;
    private final BucketModel model;
    private final BucketKeys keys;
    private final WorkPane work;
    private final VBox node = new VBox();
    private final StackPane left = new StackPane();
    private final Node planPane;
    private final Node resultPane;
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    /** Guides tests by this model. */
    public BucketScreen(Frame frame, BucketModel model, BucketPaperDesk papers, ObservableBooleanValue dark) {
        this.saying = frame.saying();
        this.model = model;
        keys = new BucketKeys(frame, model, papers);
        work = new WorkPane(saying, model);
        planPane = new PlanPane(saying, model).node();
        resultPane = new ResultPane(saying, model).node();
        build(new RepeatsPane(saying, model.progress(), dark));
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

    private void build(RepeatsPane repeats) {
        node.getStyleClass().add("bucket-screen");
        HBox.setHgrow(left, Priority.ALWAYS);
        HBox body = new HBox(left, repeats);
        body.getStyleClass().add("bucket-body");
        body.setMinHeight(0);
        VBox.setVgrow(body, Priority.ALWAYS);
        node.getChildren().addAll(head(), body);
    }

    private HBox head() {
        Label sentence = new Label();
        sentence.setId("bucket-sentence");
        sentence.getStyleClass().add("bucket-sentence");
        sentence.setWrapText(true);
        sentence.setMinHeight(Label.USE_PREF_SIZE);
        sentence.setMaxWidth(Double.MAX_VALUE);
        sentence.textProperty().bind(saying.text(model.sentenceProperty()));
        HBox.setHgrow(sentence, Priority.ALWAYS);
        Label counter = new Label();
        counter.getStyleClass().add("bucket-counter");
        counter.setMinWidth(Label.USE_PREF_SIZE);
        counter.textProperty()
                .bind(saying.text(Bindings.createObjectBinding(
                        this::counted, model.progress().runProperty(), model.stepProperty())));
        HBox head = new HBox(sentence, counter);
        head.getStyleClass().add("bucket-head");
        return head;
    }

    private Word counted() {
        int run = model.progress().runProperty().get();
        boolean going = model.stepProperty().get().underWay() && run > 0;
        return going
                ? Word.of(
                        "ui.bucket.run", run, model.setUp().planProperty().get().total())
                : Word.NONE;
    }

    private void show(BucketStep before, BucketStep now) {
        if (now == BucketStep.PLAN) {
            left.getChildren().setAll(planPane);
            actions.setAll(keys.before());
        } else if (now == BucketStep.RESULT) {
            left.getChildren().setAll(resultPane);
            actions.setAll(keys.after());
        } else if (!before.underWay()) {
            left.getChildren().setAll(work.node());
            actions.setAll(keys.during(work::takeWeight));
        } else {
            return;
        }
        // Never left on a field that is gone: STOP's key comes in by the node that has it.
        node.requestFocus();
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
        if (model.setUp().benchProperty().get().isEmpty()) {
            model.setUp().findBenches(all -> {});
        }
    }

    @Override
    public void scanned(String text) {
        if (model.stepProperty().get() == BucketStep.PLAN) {
            model.setUp().serialProperty().set(text);
        }
    }
}
