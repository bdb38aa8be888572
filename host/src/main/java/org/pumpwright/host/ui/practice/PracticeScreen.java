package org.pumpwright.host.ui.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
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
import org.pumpwright.host.ui.work.PracticeModel;
import org.pumpwright.host.ui.work.PracticeModel.Stage;
import org.pumpwright.host.ui.work.RunModel;
import org.pumpwright.host.ui.work.Word;

/** Simulated units to learn on: choose what is wrong or be surprised, test, guess, and be told. JavaFX thread only. */
public final class PracticeScreen implements Screen {
    private static final int COLUMNS = 3;

    private final Frame frame;
    private final Saying saying;
    private final PracticeModel model;
    private final RunModel run;
    private final VBox node = new VBox();
    private final VBox stage = new VBox();
    private final GridPane choices = grid(COLUMNS);
    private final ScrollPane choicesPane = new ScrollPane(choices);
    private final GridPane guesses = grid(2);
    private final ScrollPane guessesPane = new ScrollPane(guesses);
    private final VBox answer = new VBox();
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    /** Practises with these runs. */
    public PracticeScreen(Frame frame, PracticeModel model, RunModel run) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        this.run = run;
        node.getStyleClass().add("practice-screen");
        stage.getStyleClass().add("practice-stage");
        stage.setMinHeight(0);
        VBox.setVgrow(stage, Priority.ALWAYS);
        for (ScrollPane pane : List.of(choicesPane, guessesPane)) {
            pane.setFitToWidth(true);
            pane.setMinHeight(0);
            pane.setFocusTraversable(false);
            VBox.setVgrow(pane, Priority.ALWAYS);
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
        VBox.setVgrow(answer, Priority.ALWAYS);
    }

    private static GridPane grid(int columns) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("choice-grid");
        ColumnConstraints share = new ColumnConstraints();
        share.setPercentWidth(100.0 / columns);
        for (int i = 0; i < columns; i++) {
            grid.getColumnConstraints().add(share);
        }
        return grid;
    }

    private void showFaults() {
        fill(choices, COLUMNS, model.faults(), fault -> model.faultProperty().set(Optional.of(fault)));
        List<Fault> faults = model.faults();
        for (int i = 0; i < faults.size(); i++) {
            Fault fault = faults.get(i);
            ((ChoiceButton) choices.getChildren().get(i))
                    .chosenProperty()
                    .bind(model.faultProperty().map(now -> now.equals(Optional.of(fault))));
        }
    }

    private void showGuesses() {
        fill(guesses, 2, model.quiz().guesses(), model::guess);
    }

    private void fill(GridPane grid, int columns, List<Fault> faults, Consumer<Fault> deed) {
        List<ChoiceButton> buttons = new ArrayList<>();
        for (Fault fault : faults) {
            ChoiceButton button = new ChoiceButton(saying.text(PracticeModel.name(fault)), () -> deed.accept(fault));
            button.setId("fault-" + fault.word());
            buttons.add(button);
        }
        grid.getChildren().clear();
        for (int i = 0; i < buttons.size(); i++) {
            grid.add(buttons.get(i), i % columns, i / columns);
        }
    }

    private void show() {
        Stage now = model.stageProperty().get();
        switch (now) {
            case CHOOSE, RUN -> stage.getChildren().setAll(choicesPane);
            case GUESS -> stage.getChildren().setAll(guessesPane);
            case ANSWER -> stage.getChildren().setAll(answer);
        }
        choices.setDisable(now == Stage.RUN);
        addActions(now);
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
