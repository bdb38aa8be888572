package org.pumpwright.host.ui.work;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
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

/** Simulated units to learn on: a fault is chosen or drawn, the run goes as usual, and then it is guessed. JavaFX thread only. */
public final class PracticeModel {
    private static final int GUESSES = 8;
    private static final String PUMP = "demo-pump";

    private final Background background;
    private final Shelf shelf;
    private final WorkInHand work;
    private final Random surprise;
    private final ObservableList<UnitModel> models = FXCollections.observableArrayList();
    private final ObservableList<Fault> faults = FXCollections.observableArrayList();
    private final ObservableList<Fault> faultsShown = FXCollections.unmodifiableObservableList(faults);
    private final ObservableList<Fault> guesses = FXCollections.observableArrayList();
    private final ObservableList<Fault> guessesShown = FXCollections.unmodifiableObservableList(guesses);
    private final ObservableList<Row> giveaway = FXCollections.observableArrayList();
    private final ObservableList<Row> giveawayShown = FXCollections.unmodifiableObservableList(giveaway);
    private final ObjectProperty<Optional<UnitModel>> model = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<Fault>> fault = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Severity> severity = new SimpleObjectProperty<>(Severity.MODERATE);
    private final ReadOnlyObjectWrapper<Stage> stage = new ReadOnlyObjectWrapper<>(Stage.CHOOSE);
    private final ReadOnlyObjectWrapper<Word> answer = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Mark> mark = new ReadOnlyObjectWrapper<>(Mark.UNKNOWN);
    private final ReadOnlyIntegerWrapper asked = new ReadOnlyIntegerWrapper();
    private final ReadOnlyIntegerWrapper right = new ReadOnlyIntegerWrapper();
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
        giveaway.setAll(VerdictRows.giveaway(result.record()));
        if (secret) {
            guesses.setAll(drawGuesses(drawn.get()));
            stage.set(Stage.GUESS);
        } else {
            tell(Mark.GOOD, "ui.practice.it_was");
        }
    }

    /** The fault itself, nothing wrong, and others, in a drawn order. */
    private List<Fault> drawGuesses(PracticeUnit unit) {
        List<Fault> all = new ArrayList<>(PracticeUnit.faults(unit.kind()));
        Fault healthy = all.get(0);
        all.remove(healthy);
        all.remove(unit.fault());
        Collections.shuffle(all, surprise);
        List<Fault> chosen = new ArrayList<>(List.of(unit.fault()));
        if (!unit.fault().equals(healthy)) {
            chosen.add(healthy);
        }
        chosen.addAll(all.subList(0, Math.min(all.size(), GUESSES - chosen.size())));
        Collections.shuffle(chosen, surprise);
        return chosen;
    }

    /** Guesses what is wrong with the unit. */
    public void guess(Fault guessed) {
        if (stage.get() != Stage.GUESS) {
            return;
        }
        asked.set(asked.get() + 1);
        boolean hit = drawn.map(PracticeUnit::fault).filter(guessed::equals).isPresent();
        if (hit) {
            right.set(right.get() + 1);
        }
        tell(hit ? Mark.GOOD : Mark.BAD, hit ? "ui.practice.right" : "ui.practice.wrong");
    }

    private void tell(Mark how, String key) {
        PracticeUnit unit = drawn.orElseThrow();
        mark.set(how);
        boolean healthy = unit.fault().equals(PracticeUnit.faults(unit.kind()).get(0));
        Word what = healthy
                ? name(unit.fault())
                : Word.of("ui.practice.how_much", name(unit.fault()), word(unit.severity()));
        answer.set(Word.of(key, what, Stored.sentence(unit.fault().sentence())));
        stage.set(Stage.ANSWER);
    }

    /** Back to the choice. */
    public void again() {
        drawn = Optional.empty();
        guesses.clear();
        giveaway.clear();
        answer.set(Word.NONE);
        mark.set(Mark.UNKNOWN);
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

    /** What is to be guessed from. */
    public ObservableList<Fault> guesses() {
        return guessesShown;
    }

    /** What gave the fault away. */
    public ObservableList<Row> giveaway() {
        return giveawayShown;
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

    /** What was wrong, once it may be told. */
    public ReadOnlyObjectProperty<Word> answerProperty() {
        return answer.getReadOnlyProperty();
    }

    /** Whether the guess was right. */
    public ReadOnlyObjectProperty<Mark> markProperty() {
        return mark.getReadOnlyProperty();
    }

    /** How many were guessed in this session. */
    public ReadOnlyIntegerProperty askedProperty() {
        return asked.getReadOnlyProperty();
    }

    /** How many of them rightly. */
    public ReadOnlyIntegerProperty rightProperty() {
        return right.getReadOnlyProperty();
    }
}
