package org.pumpwright.host.ui.practice;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.control.ChoiceButton;
import org.pumpwright.host.ui.control.PretenceSign;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.control.SweepPlot;
import org.pumpwright.host.ui.control.WholeRows;
import org.pumpwright.host.ui.work.PracticeModel;
import org.pumpwright.host.ui.work.PracticeModel.Stage;
import org.pumpwright.host.ui.work.RunModel;
import org.pumpwright.host.ui.work.Word;

/** Simulated units to learn on: choose what is wrong or be surprised, test, guess, and be told. JavaFX thread only. */
public final class PracticeScreen implements Screen {
    private static final int COLUMNS = 3;
    private static final double HIGHEST_EMS = 6.5;

    private final Frame frame;
    private final Saying saying;
    private final PracticeModel model;
    private final RunModel run;
    private final VBox node = new VBox();
    private final HBox stage = new HBox();
    private final WholeRows choices = new WholeRows(COLUMNS, HIGHEST_EMS);
    private final WholeRows guesses = new WholeRows(2, HIGHEST_EMS);
    private final VBox answer = new VBox();
    private final SweepPlot sweep;
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    /**
     * Practises with these runs.
     *
     * @param dark whether the window is dark
     */
    public PracticeScreen(Frame frame, PracticeModel model, RunModel run, ObservableBooleanValue dark) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        this.run = run;
        node.getStyleClass().add("practice-screen");
        stage.getStyleClass().add("practice-stage");
        stage.setMinHeight(0);
        VBox.setVgrow(stage, Priority.ALWAYS);
        sweep = new SweepPlot(saying, run, dark);
        for (Region each : List.of(choices, guesses, answer, sweep)) {
            HBox.setHgrow(each, Priority.ALWAYS);
        }
        buildAnswer();
        node.getChildren().addAll(head(), stage);
        model.faults().addListener((ListChangeListener<Fault>) change -> showFaults());
        model.quiz().guesses().addListener((ListChangeListener<Fault>) change -> showGuesses());
        model.stageProperty().addListener((observed, old, now) -> show());
        showFaults();
        show();
    }

    private Node head() {
        Label what = label("practice-what", saying.text(model.stageProperty().map(now -> headline(now))));
        HBox.setHgrow(what, Priority.ALWAYS);
        what.setMaxWidth(Double.MAX_VALUE);
        Label tally = label(
                "practice-tally",
                saying.text(
                        "ui.practice.tally",
                        model.quiz().rightProperty(),
                        model.quiz().askedProperty()));
        tally.setId("tally");
        Word always = Word.of("ui.pretence.practice");
        HBox head = new HBox(what, new PretenceSign(saying, new SimpleObjectProperty<>(always)), tally);
        head.getStyleClass().add("practice-head");
        return head;
    }

    private static Word headline(Stage now) {
        return switch (now) {
            case CHOOSE -> Word.of("ui.practice.choose");
            case RUN -> Word.of("ui.practice.running");
            case GUESS -> Word.of("ui.practice.guess");
            case ANSWER -> Word.of("ui.practice.answer");
        };
    }

    private Label label(String styleClass, ObservableValue<String> text) {
        Label label = new Label();
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.textProperty().bind(text);
        return label;
    }

    private void buildAnswer() {
        Sign sign = new Sign(model.quiz().markProperty().get());
        sign.markProperty().bind(model.quiz().markProperty());
        Label what = label("practice-answer", saying.text(model.quiz().answerProperty()));
        what.getStyleClass().add("data");
        HBox.setHgrow(what, Priority.ALWAYS);
        HBox line = new HBox(sign, what);
        line.getStyleClass().add("ready-head");
        RowList rows = new RowList(saying, model.quiz().giveaway());
        VBox.setVgrow(rows, Priority.ALWAYS);
        answer.getChildren().addAll(line, label("heading", saying.text("ui.practice.giveaway")), rows);
        answer.setMinHeight(0);
    }

    private void showFaults() {
        choices.show(model.faults().stream()
                .map(fault -> {
                    ChoiceButton button =
                            button(fault, each -> model.faultProperty().set(Optional.of(each)));
                    button.chosenProperty().bind(model.faultProperty().map(now -> now.equals(Optional.of(fault))));
                    return button;
                })
                .toList());
    }

    private void showGuesses() {
        guesses.show(model.quiz().guesses().stream()
                .map(fault -> button(fault, model::guess))
                .toList());
    }

    private ChoiceButton button(Fault fault, Consumer<Fault> deed) {
        ChoiceButton button = new ChoiceButton(saying.text(PracticeModel.name(fault)), () -> deed.accept(fault));
        button.setId("fault-" + fault.word());
        return button;
    }

    private void show() {
        Stage now = model.stageProperty().get();
        switch (now) {
            case CHOOSE, RUN -> stage.getChildren().setAll(choices);
            case GUESS -> withSweep(guesses);
            case ANSWER -> withSweep(answer);
        }
        choices.setDisable(now == Stage.RUN);
        addActions(now);
    }

    /** The sweep stands beside, where the run had one. */
    private void withSweep(Region what) {
        stage.getChildren().setAll(what);
        if (!run.view().sweepProperty().get().dots().isEmpty()) {
            stage.getChildren().add(sweep);
        }
    }

    private void addActions(Stage now) {
        switch (now) {
            case CHOOSE -> choosing();
            case RUN ->
                actions.setAll(Action.of(saying.text("ui.practice.see_run"), () -> frame.goTo(Moment.RUN))
                        .asNext());
            case GUESS -> actions.setAll(Action.of(saying.text("ui.practice.see_run"), () -> frame.goTo(Moment.RUN)));
            case ANSWER ->
                actions.setAll(
                        Action.of(saying.text("ui.practice.again"), model::again)
                                .asNext(),
                        Action.of(saying.text("ui.run.verdict"), () -> frame.goTo(Moment.VERDICT)));
        }
    }

    private void choosing() {
        ObservableValue<String> severity = saying.text(
                model.severityProperty().map(each -> Word.of("ui.practice.severity", PracticeModel.word(each))));
        ObservableValue<String> unit = saying.text(model.modelProperty().map(found -> kind(found)));
        actions.setAll(
                Action.of(saying.text("ui.practice.surprise"), () -> model.beginSurprise(this::begin))
                        .when(run.runningProperty().not())
                        .asNext(),
                Action.of(saying.text("ui.practice.begin"), () -> model.begin(this::begin))
                        .when(run.runningProperty()
                                .not()
                                .and(Bindings.createBooleanBinding(
                                        () -> model.faultProperty().get().isPresent(), model.faultProperty()))),
                Action.of(severity, model::anotherSeverity),
                Action.of(unit, model::anotherModel));
    }

    private static Word kind(Optional<UnitModel> found) {
        return found.map(each -> Word.of("ui.kind." + each.kind().word().replace('-', '_')))
                .orElse(Word.of("ui.kind"));
    }

    private void begin() {
        frame.goTo(Moment.RUN);
        run.begin(saying.unitsProperty().get());
    }

    @Override
    public void shown() {
        model.load();
    }

    @Override
    public Moment moment() {
        return Moment.PRACTICE;
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
