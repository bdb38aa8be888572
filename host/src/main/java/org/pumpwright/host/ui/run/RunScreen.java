package org.pumpwright.host.ui.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextBoundsType;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Cue;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.control.PretenceSign;
import org.pumpwright.host.ui.control.ShownUnits;
import org.pumpwright.host.ui.control.StripChart;
import org.pumpwright.host.ui.control.SweepPlot;
import org.pumpwright.host.ui.work.RunModel;
import org.pumpwright.host.ui.work.WhyStopped;
import org.pumpwright.host.ui.work.Word;
import org.pumpwright.host.ui.work.WorkInHand;
import org.pumpwright.host.ui.work.WorkOrder;

/** A run: the flow as large as it goes, the sweep against the healthy range, and what every channel did. JavaFX thread only. */
public final class RunScreen implements Screen {
    private static final int MOST_ANSWERS = 6;

    private final Frame frame;
    private final Saying saying;
    private final RunModel model;
    private final WorkInHand work;
    private final SweepPlot sweep;
    private final RunStrip strip;
    private final VBox node = new VBox();
    private final ObservableList<Action> actions = FXCollections.observableArrayList();
    private final BooleanBinding startable;

    /**
     * Shows the run of what is in hand.
     *
     * @param dark whether the window is dark
     */
    public RunScreen(Frame frame, RunModel model, WorkInHand work, ObservableBooleanValue dark) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        this.work = work;
        startable = Bindings.createBooleanBinding(
                () -> !model.runningProperty().get()
                        && work.resultProperty().get().isEmpty()
                        && work.orderProperty().get().filter(this::mayStart).isPresent(),
                model.runningProperty(),
                work.resultProperty(),
                work.orderProperty(),
                work.fitProperty());
        sweep = new SweepPlot(saying, model, dark);
        strip = new RunStrip(saying, model, dark);
        build();
        model.onHappening(what -> frame.cue(Cue.valueOf(what.name())));
        model.questions().questionProperty().addListener((observed, old, now) -> now.ifPresent(this::ask));
        model.questions().asksWhyProperty().addListener((observed, old, now) -> {
            if (now) {
                askWhy();
            } else {
                frame.withdraw();
            }
        });
        work.resultProperty().addListener((observed, old, now) -> addActions());
        model.runningProperty().addListener((observed, old, now) -> addActions());
        addActions();
    }

    private boolean mayStart(WorkOrder order) {
        return work.fitProperty().get() || order.practice().isPresent();
    }

    private void build() {
        node.getStyleClass().add("run-screen");
        HBox top = new HBox(flow(), words());
        top.getStyleClass().add("run-top");
        StripChart chart = strip.chart();
        HBox.setHgrow(sweep, Priority.ALWAYS);
        HBox.setHgrow(chart, Priority.ALWAYS);
        HBox drawings = new HBox(sweep, chart);
        drawings.getStyleClass().add("run-drawings");
        drawings.setMinHeight(0);
        VBox.setVgrow(drawings, Priority.ALWAYS);
        node.getChildren().addAll(top, new ProgressStrip(model.view().progressProperty()), drawings);
    }

    private Node flow() {
        Text figure = new Text();
        figure.setBoundsType(TextBoundsType.LOGICAL_VERTICAL_CENTER);
        figure.setId("flow");
        figure.getStyleClass().add("run-flow");
        figure.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> ShownUnits.fixed(
                                "%.2f",
                                ShownUnits.flow(
                                        model.view().flowProperty().get().m3PerSecond(),
                                        saying.unitsProperty().get())),
                        model.view().flowProperty(),
                        saying.unitsProperty()));
        Label unit = new Label();
        unit.getStyleClass().add("run-flow-unit");
        unit.textProperty().bind(saying.unitsProperty().map(ShownUnits::flow));
        HBox box = new HBox(figure, unit);
        box.getStyleClass().add("run-figure");
        return box;
    }

    private Node words() {
        Label headline = label("run-headline", saying.text(model.view().headlineProperty()));
        Label left = label("run-left", saying.text(model.view().leftProperty()));
        Label detail = label("run-detail", saying.text(model.view().detailProperty()));
        ObservableValue<Word> whose =
                work.orderProperty().map(order -> order.map(RunScreen::subject).orElse(Word.NONE));
        Label subject = label("subject", saying.text(whose));
        subject.getStyleClass().add("data");
        detail.getStyleClass().add("data");
        headline.setMinWidth(0);
        HBox.setHgrow(headline, Priority.ALWAYS);
        headline.setMaxWidth(Double.MAX_VALUE);
        HBox first = new HBox(headline, left);
        HBox.setHgrow(detail, Priority.ALWAYS);
        detail.setMaxWidth(Double.MAX_VALUE);
        HBox last = new HBox(detail, new PretenceSign(saying, model.pretenceProperty()));
        last.getStyleClass().add("subject-line");
        VBox words = new VBox(subject, first, last);
        words.getStyleClass().add("run-words");
        HBox.setHgrow(words, Priority.ALWAYS);
        return words;
    }

    private static Word subject(WorkOrder order) {
        String plan = order.plan().title();
        return order.serial().equals(WorkOrder.NO_PLATE)
                ? Word.of("ui.run.subject.no_plate", plan)
                : Word.of("ui.run.subject", order.serial(), plan);
    }

    private static Label label(String styleClass, ObservableValue<String> text) {
        Label label = new Label();
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        label.textProperty().bind(text);
        return label;
    }

    private void addActions() {
        boolean running = model.runningProperty().get();
        boolean practice =
                work.orderProperty().get().flatMap(WorkOrder::practice).isPresent();
        Action end = Action.of(saying.text("ui.run.end"), this::askToEnd).when(model.runningProperty());
        if (running) {
            Action pause = Action.of(saying.text("ui.run.pause"), model::pause).when(model.pausableProperty());
            set(pause, Action.nothing(), end);
        } else if (work.resultProperty().get().isPresent()) {
            Action verdict = Action.of(saying.text("ui.run.verdict"), () -> frame.goTo(Moment.VERDICT));
            Action answer = Action.of(saying.text("ui.run.answer"), () -> frame.goTo(Moment.PRACTICE));
            set(practice ? answer.asNext() : verdict.asNext(), Action.nothing(), end);
        } else {
            Action start = Action.of(saying.text("ui.ready.start"), this::begin).when(startable);
            Action ready = Action.of(saying.text("ui.run.ready"), () -> frame.goTo(Moment.READY));
            set(start.asNext(), ready, end);
        }
    }

    private void set(Action first, Action second, Action last) {
        actions.setAll(first, second, Action.nothing(), Action.nothing(), Action.nothing(), last);
    }

    private void begin() {
        model.begin(saying.unitsProperty().get());
    }

    private void ask(Ask question) {
        frame.goTo(Moment.RUN);
        List<Action> answers = new ArrayList<>();
        question.answers().stream().limit(MOST_ANSWERS).forEach(answer -> {
            Action action = Action.of(
                    saying.text(answerWord(answer)).map(RunScreen::capital),
                    () -> model.questions().answer(answer));
            answers.add(answers.isEmpty() ? action.asNext() : action);
        });
        boolean pause = question.name().equals("pause");
        Word text = pause ? Word.of("ui.run.paused") : Word.stored(question.question());
        frame.ask(Prompt.of(saying.text("ui.run.ask"), saying.text(text), answers.toArray(new Action[0])));
    }

    private static Word answerWord(Ask.Answer answer) {
        return Word.stored(answer.word());
    }

    /** Plans write their answers small; a key begins with a capital. */
    private static String capital(String word) {
        return word.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    private void askToEnd() {
        frame.ask(new Prompt(
                saying.text("ui.run.end.ask"),
                saying.text("ui.run.end.text"),
                Optional.empty(),
                Action.atTheEnds(
                        Action.of(saying.text("ui.run.end"), model::end),
                        Action.of(saying.text("ui.run.go_on"), () -> {}).asNext())));
    }

    private void askWhy() {
        frame.goTo(Moment.RUN);
        List<Action> answers = new ArrayList<>();
        for (WhyStopped why : WhyStopped.values()) {
            answers.add(
                    Action.of(saying.text(why.word()), () -> model.questions().because(Optional.of(why))));
        }
        answers.add(Action.of(
                saying.text("ui.run.why.none"), () -> model.questions().because(Optional.empty())));
        frame.ask(new Prompt(saying.text("ui.run.why"), saying.text("ui.run.why.text"), Optional.empty(), answers));
    }

    @Override
    public Moment moment() {
        return Moment.RUN;
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
