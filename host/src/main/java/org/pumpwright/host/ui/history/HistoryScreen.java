package org.pumpwright.host.ui.history;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.text.Texts;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Pick;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.work.HistoryModel;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.StoredRun;
import org.pumpwright.host.ui.work.Word;

/** What is on record: one field to look for anything, the runs found, one of them with its curve, two of them over each other. JavaFX thread only. */
public final class HistoryScreen implements Screen {
    private final Frame frame;
    private final Saying saying;
    private final HistoryModel model;
    private final RunPlot plot;
    private final RowList list;
    private final StackPane node = new StackPane();
    private final Node listPane;
    private final Node runPane;
    private final Field field;
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    /** Looks through the records of this model. */
    public HistoryScreen(Frame frame, HistoryModel model, ObservableBooleanValue dark) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        plot = new RunPlot(saying, model, dark);
        list = new RowList(saying, model.rows());
        field = new Field(saying.text("ui.history.look_for"), "history-text");
        listPane = listPane();
        runPane = runPane();
        node.getStyleClass().add("history-screen");
        node.setMinHeight(0);
        model.shownProperty().addListener((observed, old, now) -> show());
        show();
    }

    private Node listPane() {
        field.text().textProperty().bindBidirectional(model.textProperty());
        field.text().setOnAction(entered -> list.requestFocus());
        model.textProperty().addListener((observed, old, now) -> model.search());
        list.setId("history-list");
        list.setOnKeyPressed(press -> {
            if (press.getCode() == KeyCode.ENTER) {
                openSelected();
            }
        });
        list.setOnMouseClicked(click -> {
            if (click.getClickCount() == 2) {
                openSelected();
            }
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        HBox.setHgrow(field, Priority.ALWAYS);
        Label verdict = chip(model.askedProperty().map(asked -> Word.of("ui.history.asked." + asked.style())));
        Label since = chip(model.sinceProperty().map(span -> Word.of("ui.history.since." + span.style())));
        HBox top = new HBox(field, verdict, since);
        top.getStyleClass().add("history-top");
        Label headline = new Label();
        headline.getStyleClass().add("headline");
        headline.setWrapText(true);
        headline.textProperty().bind(saying.text(model.headlineProperty()));
        VBox pane = new VBox(top, headline, list);
        pane.getStyleClass().add("history-list");
        return pane;
    }

    private Label chip(ObservableValue<Word> word) {
        Label chip = new Label();
        chip.getStyleClass().add("chip");
        chip.setMinWidth(Label.USE_PREF_SIZE);
        chip.textProperty().bind(saying.text(word));
        return chip;
    }

    private Node runPane() {
        Sign sign = new Sign(Mark.UNKNOWN);
        sign.markProperty()
                .bind(model.shownProperty().map(run -> run.map(StoredRun::mark).orElse(Mark.UNKNOWN)));
        Label verdict = label("headline");
        verdict.textProperty()
                .bind(saying.text(model.shownProperty()
                        .map(run -> run.map(StoredRun::verdict).orElse(Word.NONE))));
        verdict.setMinWidth(Label.USE_PREF_SIZE);
        Label subject = label("history-subject");
        HBox.setHgrow(subject, Priority.ALWAYS);
        subject.setMinHeight(Label.USE_PREF_SIZE);
        subject.getStyleClass().add("data");
        subject.textProperty()
                .bind(saying.text(model.shownProperty()
                        .map(run -> run.map(StoredRun::subject).orElse(Word.NONE))));
        HBox head = new HBox(sign, verdict, subject);
        head.getStyleClass().add("head");
        head.setAlignment(Pos.CENTER_LEFT);
        Label before = label("history-before");
        before.textProperty()
                .bind(saying.text(model.earlierProperty()
                        .map(run -> run.map(each -> Word.of("ui.history.hollow", each.verdict()))
                                .orElse(Word.NONE))));
        before.managedProperty().bind(before.textProperty().isNotEmpty());
        before.setMinHeight(Label.USE_PREF_SIZE);
        VBox.setVgrow(plot.plot(), Priority.ALWAYS);
        plot.plot().setMinHeight(0);
        VBox left = new VBox(plot.plot(), before);
        HBox.setHgrow(left, Priority.ALWAYS);
        left.setMinHeight(0);
        RowList details = new RowList(saying, model.details());
        details.getStyleClass().add("history-details");
        HBox body = new HBox(left, details);
        body.getStyleClass().add("history-body");
        body.setMinHeight(0);
        VBox.setVgrow(body, Priority.ALWAYS);
        VBox pane = new VBox(head, body);
        pane.getStyleClass().add("history-run");
        pane.setMinHeight(0);
        return pane;
    }

    private static Label label(String style) {
        Label label = new Label();
        label.getStyleClass().add(style);
        label.setWrapText(true);
        return label;
    }

    private void show() {
        if (model.shownProperty().get().isPresent()) {
            node.getChildren().setAll(runPane);
            runActions();
        } else {
            node.getChildren().setAll(listPane);
            listActions();
        }
        // Never left on a field that is gone: STOP's key comes in by the node that has it.
        node.requestFocus();
    }

    private void listActions() {
        BooleanBinding chosen = Bindings.isNotNull(list.getSelectionModel().selectedItemProperty())
                .and(model.busyProperty().not());
        actions.setAll(
                Action.of(saying.text("ui.history.open"), this::openSelected)
                        .when(chosen)
                        .asNext(),
                Action.of(saying.text("ui.history.verdict"), model::otherVerdict),
                Action.of(saying.text("ui.history.days"), model::otherDays),
                Action.of(saying.text("ui.history.clear"), model::clear),
                Action.nothing(),
                Action.nothing());
    }

    private void openSelected() {
        model.open(list.getSelectionModel().getSelectedIndex());
    }

    private void runActions() {
        BooleanBinding free = model.busyProperty().not();
        boolean measured = model.shownProperty().get().flatMap(StoredRun::run).isPresent();
        boolean others = measured
                && !model.shownProperty()
                        .get()
                        .map(StoredRun::others)
                        .orElse(List.of())
                        .isEmpty();
        ObservableValue<Word> other = plot.kindProperty()
                .map(kind -> Word.of(kind == Feature.Kind.FLOW ? "ui.history.show_amps" : "ui.history.show_flow"));
        actions.setAll(
                measured
                        ? Action.of(saying.text("ui.history.paper"), this::openPaper)
                                .when(free)
                                .asNext()
                        : Action.nothing(),
                others
                        ? Action.of(saying.text("ui.history.compare"), this::askWhich)
                                .when(free)
                        : Action.nothing(),
                measured ? Action.of(saying.text(other), this::flipKind) : Action.nothing(),
                Action.nothing(),
                Action.nothing(),
                Action.of(saying.text("ui.history.back"), model::back));
    }

    private void flipKind() {
        boolean flow = plot.kindProperty().get() == Feature.Kind.FLOW;
        plot.kindProperty().set(flow ? Feature.Kind.MOTOR_AMPS : Feature.Kind.FLOW);
    }

    private void openPaper() {
        model.openPaper(
                saying.unitsProperty().get(), Texts.in(saying.languageProperty().get()));
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
        model.search();
    }

    @Override
    public void scanned(String text) {
        while (model.shownProperty().get().isPresent()) {
            model.back();
        }
        model.textProperty().set(text);
    }
}
