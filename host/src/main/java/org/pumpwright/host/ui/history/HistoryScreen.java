package org.pumpwright.host.ui.history;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.pumpwright.host.app.paper.PaperKind;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.OtherPapers;
import org.pumpwright.host.ui.Pick;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.work.HistoryModel;
import org.pumpwright.host.ui.work.HistorySearch;
import org.pumpwright.host.ui.work.StoredRun;
import org.pumpwright.host.ui.work.Word;

/** What is on record: one field to look for anything, the runs found, one of them with its curve, two of them over each other. JavaFX thread only. */
public final class HistoryScreen implements Screen {
    private static final ObservableBooleanValue NEVER = new SimpleBooleanProperty(false);

    private final Frame frame;
    private final Saying saying;
    private final HistoryModel model;
    private final RunPlot plot;
    private final StackPane node = new StackPane();
    private final FoundPane found;
    private final RunPane run;
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    /** Looks through the records of this model. */
    public HistoryScreen(Frame frame, HistoryModel model, ObservableBooleanValue dark) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        plot = new RunPlot(saying, model, dark);
        found = new FoundPane(saying, model);
        run = new RunPane(saying, model, plot);
        node.getStyleClass().add("history-screen");
        node.setMinHeight(0);
        model.shownProperty().addListener((observed, old, now) -> show());
        show();
    }

    private void show() {
        Optional<StoredRun> shown = model.shownProperty().get();
        if (shown.isPresent()) {
            node.getChildren().setAll(run.node());
            runActions(shown.get());
        } else {
            node.getChildren().setAll(found.node());
            listActions();
        }
        // Never left on a field that is gone: STOP's key comes in by the node that has it.
        node.requestFocus();
    }

    private void listActions() {
        HistorySearch search = model.search();
        BooleanBinding chosen = Bindings.isNotNull(
                        found.list().getSelectionModel().selectedItemProperty())
                .and(model.busyProperty().not())
                .and(search.busyProperty().not());
        actions.setAll(
                Action.of(saying.text("ui.history.open"), found::openSelected)
                        .when(chosen)
                        .asNext(),
                Action.of(saying.text("ui.history.verdict"), search::otherVerdict),
                Action.of(saying.text("ui.history.days"), search::otherDays),
                Action.of(saying.text("ui.history.clear"), search::clear),
                Action.nothing(),
                Action.nothing());
    }

    private void runActions(StoredRun shown) {
        BooleanBinding free =
                model.busyProperty().not().and(model.makingPaperProperty().not());
        boolean measured = shown.run().isPresent();
        boolean drawn = shown.drawn();
        ObservableValue<Word> other = plot.kindProperty()
                .map(kind -> Word.of(kind == Feature.Kind.FLOW ? "ui.history.show_amps" : "ui.history.show_flow"));
        actions.setAll(
                Action.of(saying.text("ui.papers.page"), () -> open(model.mainPaper()))
                        .when(shown.whole() ? free : NEVER)
                        .asNext(),
                measured && !shown.others().isEmpty()
                        ? Action.of(saying.text("ui.history.compare"), this::askWhich)
                                .when(free)
                        : Action.nothing(),
                drawn ? Action.of(saying.text(other), this::flipKind) : Action.nothing(),
                Action.of(saying.text("ui.papers.label"), () -> open(PaperKind.LABEL))
                        .when(shown.whole() ? free : NEVER),
                measured
                        ? Action.of(
                                        saying.text("ui.papers.others"),
                                        () -> OtherPapers.ask(frame, shown.hasClaim(), this::open))
                                .when(free)
                        : Action.nothing(),
                Action.of(saying.text("ui.history.back"), model::back));
    }

    private void open(PaperKind kind) {
        model.openPaper(kind, OtherPapers.manner(saying));
    }

    private void flipKind() {
        boolean flow = plot.kindProperty().get() == Feature.Kind.FLOW;
        plot.kindProperty().set(flow ? Feature.Kind.MOTOR_AMPS : Feature.Kind.FLOW);
    }

    private void askWhich() {
        List<Entry> others = model.shownProperty().get().map(StoredRun::others).orElse(List.of());
        Pick.one(frame, "ui.history.which", HistoryModel.rows(others), place -> model.compare(others.get(place)));
    }

    @Override
    public Moment moment() {
        return Moment.HISTORY;
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
        model.search().search();
    }

    @Override
    public void scanned(String text) {
        while (model.shownProperty().get().isPresent()) {
            model.back();
        }
        model.search().textProperty().set(text);
    }
}
