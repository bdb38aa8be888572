package org.pumpwright.host.ui.work;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Severity;

/**
 * Simulated units to learn on: a fault is chosen or drawn, the run goes as usual, and then it is guessed in a {@link PracticeQuiz}. JavaFX
 * thread only.
 */
public final class PracticeModel {
    private static final String PUMP = "demo-pump";

    private final Background background;
    private final Shelf shelf;
    private final WorkInHand work;
    private final Random surprise;
    private final ObservableList<UnitModel> models = FXCollections.observableArrayList();
    private final ObservableList<Fault> faults = FXCollections.observableArrayList();
    private final ObservableList<Fault> faultsShown = FXCollections.unmodifiableObservableList(faults);
    private final ObjectProperty<Optional<UnitModel>> model = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<Fault>> fault = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Severity> severity = new SimpleObjectProperty<>(Severity.MODERATE);
    private final ReadOnlyObjectWrapper<Stage> stage = new ReadOnlyObjectWrapper<>(Stage.CHOOSE);
    private final PracticeQuiz quiz;
    private Optional<PracticeUnit> drawn = Optional.empty();
    private boolean secret;

    /** How far a practice unit is. */
    public enum Stage {
        /** What is to be practised is chosen. */
        CHOOSE,
        /** The unit is being tested. */
        RUN,
        /** What is wrong with it is guessed. */
        GUESS,
        /** What was wrong with it is told. */
        ANSWER
    }

    /** Draws surprises by the clock. */
    public PracticeModel(Background background, Shelf shelf, WorkInHand work, Clock clock) {
        this(background, shelf, work, new Random(clock.millis()));
    }

    /** Draws surprises from this source. */
    PracticeModel(Background background, Shelf shelf, WorkInHand work, Random surprise) {
        this.background = background;
        this.shelf = shelf;
        this.work = work;
        this.surprise = surprise;
        quiz = new PracticeQuiz(surprise);
        model.addListener((observed, old, now) -> {
            fault.set(Optional.empty());
            faults.setAll(now.map(each -> PracticeUnit.faults(each.kind())).orElse(List.of()));
        });
        work.resultProperty().addListener((observed, old, now) -> now.ifPresent(this::over));
        work.orderProperty().addListener((observed, old, now) -> {
            if (now.flatMap(WorkOrder::practice).isEmpty() && stage.get() != Stage.CHOOSE) {
                again();
            }
        });
    }

    /** Reads the models that there are to practise on. */
    public void load() {
        background.run(shelf::models, found -> {
            models.setAll(found.stream().filter(UnitModel::invented).toList());
            if (model.get().isEmpty()) {
                model.set(models.stream().filter(each -> each.id().equals(PUMP)).findFirst());
            }
        });
    }

    /** The next model there is to practise on. */
    public void anotherModel() {
        if (!models.isEmpty()) {
            int place = model.get().map(models::indexOf).orElse(-1);
            model.set(Optional.of(models.get((place + 1) % models.size())));
        }
    }

    /** The next severity. */
    public void anotherSeverity() {
        List<Severity> all = List.of(Severity.values());
        severity.set(all.get((all.indexOf(severity.get()) + 1) % all.size()));
    }

    /**
     * Takes a unit with the chosen fault in hand.
     *
     * @param begin begins its run
     */
    public void begin(Runnable begin) {
        fault.get().ifPresent(chosen -> take(chosen, severity.get(), false, begin));
    }

    /**
     * Takes a unit in hand of which nobody is told what is wrong.
     *
     * @param begin begins its run
     */
    public void beginSurprise(Runnable begin) {
        if (!faults.isEmpty()) {
            Severity[] all = Severity.values();
            take(faults.get(surprise.nextInt(faults.size())), all[surprise.nextInt(all.length)], true, begin);
        }
    }

    private void take(Fault wrong, Severity how, boolean hidden, Runnable begin) {
        UnitModel unit = model.get().orElseThrow();
        long seed = surprise.nextInt(1_000_000);
        PracticeUnit practice = new PracticeUnit(unit.kind(), wrong, how, seed);
        background.run(() -> shelf.plan(unit.plan()), plan -> {
            if (work.busyProperty().get()) {
                return;
            }
            work.take(order(unit, plan, practice));
            drawn = Optional.of(practice);
            secret = hidden;
            stage.set(Stage.RUN);
            begin.run();
        });
    }

    private static WorkOrder order(UnitModel unit, Plan plan, PracticeUnit practice) {
        return new WorkOrder(
                unit,
                plan,
                WorkOrder.NO_PLATE,
                "practice",
                Product.WATER,
                Acceptance.Job.PLAIN,
                Optional.empty(),
                Optional.of(practice));
    }

    private void over(Acceptance.Result result) {
        if (stage.get() != Stage.RUN || drawn.isEmpty()) {
            return;
        }
        quiz.over(result.record());
        if (secret) {
            quiz.ask(drawn.get());
            stage.set(Stage.GUESS);
        } else {
            quiz.tell(drawn.get());
            stage.set(Stage.ANSWER);
        }
    }

    /** Guesses what is wrong with the unit. */
    public void guess(Fault guessed) {
        if (stage.get() != Stage.GUESS) {
            return;
        }
        quiz.guessed(guessed, drawn.orElseThrow());
        stage.set(Stage.ANSWER);
    }

    /** Back to the choice. */
    public void again() {
        drawn = Optional.empty();
        quiz.clear();
        stage.set(Stage.CHOOSE);
    }

    /** A fault by its short name. */
    public static Word name(Fault fault) {
        return Word.of("ui.fault." + fault.word().replace('-', '_'));
    }

    /** A severity. */
    public static Word word(Severity severity) {
        return Word.of("ui.severity." + severity.name().toLowerCase(Locale.ROOT));
    }

    /** What can be wrong with a unit of the model. */
    public ObservableList<Fault> faults() {
        return faultsShown;
    }

    /** What is practised on. */
    public ObjectProperty<Optional<UnitModel>> modelProperty() {
        return model;
    }

    /** The chosen fault. */
    public ObjectProperty<Optional<Fault>> faultProperty() {
        return fault;
    }

    /** How far the chosen fault has gone. */
    public ObjectProperty<Severity> severityProperty() {
        return severity;
    }

    /** How far the practice is. */
    public ReadOnlyObjectProperty<Stage> stageProperty() {
        return stage.getReadOnlyProperty();
    }

    /** The guess after a surprise. */
    public PracticeQuiz quiz() {
        return quiz;
    }
}
