package org.pumpwright.host.ui.verdict;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.paper.PaperKind;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.OtherPapers;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.control.PretenceSign;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.control.TitledRows;
import org.pumpwright.host.ui.control.VerdictBoard;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.VerdictModel;
import org.pumpwright.host.ui.work.Word;

/** What came of a run: the verdict as large as the window allows, why, and what to do next. JavaFX thread only. */
public final class VerdictScreen implements Screen {
    private final Frame frame;
    private final Saying saying;
    private final VerdictModel model;
    private final VerdictBoard board;
    private final VBox node = new VBox();
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    /**
     * Shows what came of a run.
     *
     * @param history looks at a run on record, by its id, to hold it against earlier ones; empty where there is no such screen
     */
    public VerdictScreen(Frame frame, VerdictModel model, Optional<Consumer<String>> history) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        ObservableValue<Word> word = model.verdictProperty()
                .map(found -> found.map(
                                verdict -> Word.of("verdict." + verdict.name().toLowerCase(Locale.ROOT)))
                        .orElse(Word.of("ui.verdict.none")));
        board = new VerdictBoard(saying.text(word));
        build();
        model.verdictProperty().addListener((observed, old, now) -> now.ifPresent(board::show));
        model.verdictProperty().get().ifPresent(board::show);
        addActions(history);
    }

    private void build() {
        node.getStyleClass().add("verdict-screen");
        Label subject = label("subject", saying.text(model.subjectProperty()));
        subject.getStyleClass().add("data");
        Label meaning = label("verdict-meaning", saying.text(model.meaningProperty()));
        HBox lists = new HBox(
                new TitledRows(saying, "ui.verdict.why", model.why(), "why"),
                new TitledRows(saying, "ui.verdict.next", model.next(), "next"));
        lists.getStyleClass().addAll("columns", "verdict-lists");
        VBox.setVgrow(lists, Priority.ALWAYS);
        HBox.setHgrow(subject, Priority.ALWAYS);
        subject.setMaxWidth(Double.MAX_VALUE);
        HBox whose = new HBox(subject, new PretenceSign(saying, model.pretenceProperty()));
        whose.getStyleClass().add("subject-line");
        node.getChildren().addAll(whose, board, meaning, complaint(), lists, papers());
    }

    /** The answer that the person at the counter waits for, in a line of its own. */
    private Node complaint() {
        Sign sign = new Sign(Mark.UNKNOWN);
        sign.markProperty()
                .bind(model.complaintProperty().map(row -> row.map(Row::mark).orElse(Mark.UNKNOWN)));
        Label answer = label(
                "complaint-answer",
                saying.text(
                        model.complaintProperty().map(row -> row.map(Row::name).orElse(Word.NONE))));
        answer.setId("complaint");
        answer.setMinWidth(Region.USE_PREF_SIZE);
        answer.setWrapText(false);
        Label why = label(
                "complaint-why",
                saying.text(model.complaintProperty()
                        .map(row -> row.map(Row::finding).orElse(Word.NONE))));
        why.getStyleClass().add("data");
        HBox.setHgrow(why, Priority.ALWAYS);
        HBox line = new HBox(sign, answer, why);
        line.getStyleClass().add("complaint-line");
        line.visibleProperty().bind(model.complaintProperty().map(Optional::isPresent));
        line.managedProperty().bind(line.visibleProperty());
        line.setMinHeight(Region.USE_PREF_SIZE);
        return line;
    }

    /** Whether the run is on record, and where its last paper is. */
    private Node papers() {
        Sign sign = new Sign(Mark.UNKNOWN);
        sign.markProperty().bind(model.filedProperty().map(Row::mark));
        Label filed = label("filed", saying.text(model.filedProperty().map(Row::name)));
        filed.setId("filed");
        Label paper = label("paper-line", saying.text(model.paperProperty()));
        paper.getStyleClass().add("data");
        paper.visibleProperty().bind(model.paperProperty().map(each -> !each.equals(Word.NONE)));
        paper.managedProperty().bind(paper.visibleProperty());
        HBox line = new HBox(sign, filed, paper);
        line.getStyleClass().add("papers-line");
        line.visibleProperty().bind(model.verdictProperty().map(Optional::isPresent));
        line.setMinHeight(Region.USE_PREF_SIZE);
        return line;
    }

    private static Label label(String styleClass, ObservableValue<String> text) {
        Label label = new Label();
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.textProperty().bind(text);
        return label;
    }

    private void addActions(Optional<Consumer<String>> history) {
        BooleanBinding there = Bindings.createBooleanBinding(
                        () -> model.verdictProperty().get().isPresent(), model.verdictProperty())
                .and(model.makingPaperProperty().not());
        BooleanBinding next = Bindings.createBooleanBinding(
                () -> model.nextPlanProperty().get().begins(), model.nextPlanProperty());
        actions.setAll(
                Action.of(saying.text("ui.verdict.begin_next"), this::nextTest)
                        .when(next)
                        .asNext(),
                Action.of(saying.text("ui.papers.page"), () -> open(PaperKind.TECHNICIAN))
                        .when(there),
                Action.of(saying.text("ui.papers.label"), () -> open(PaperKind.LABEL))
                        .when(there),
                Action.of(saying.text("ui.papers.others"), () -> OtherPapers.ask(frame, model.hasClaim(), this::open))
                        .when(there),
                history.map(look -> Action.of(saying.text("ui.verdict.compare"), () -> compare(look)))
                        .orElse(Action.nothing()),
                Action.of(saying.text("ui.verdict.next_unit"), () -> frame.goTo(Moment.RECEIVE)));
    }

    /** To this run in the history; to the list of runs while it is not on record. */
    private void compare(Consumer<String> look) {
        frame.goTo(Moment.HISTORY);
        model.onRecord().ifPresent(look);
    }

    private void open(PaperKind kind) {
        model.open(kind, OtherPapers.manner(saying));
    }

    private void nextTest() {
        if (model.bucketNext()) {
            frame.goTo(Moment.BUCKET);
            return;
        }
        model.beginNextTest();
        frame.goTo(model.practice() ? Moment.RUN : Moment.READY);
    }

    @Override
    public Moment moment() {
        return Moment.VERDICT;
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public ObservableList<Action> actions() {
        return actions;
    }
}
