package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.record.RunRecord;

/** The guess after a surprise: what there is to choose from, what it was, and how many were right. JavaFX thread only. */
public final class PracticeQuiz {
    private static final int GUESSES = 8;

    private final Random surprise;
    private final ObservableList<Fault> guesses = FXCollections.observableArrayList();
    private final ObservableList<Fault> guessesShown = FXCollections.unmodifiableObservableList(guesses);
    private final ObservableList<Row> giveaway = FXCollections.observableArrayList();
    private final ObservableList<Row> giveawayShown = FXCollections.unmodifiableObservableList(giveaway);
    private final ReadOnlyObjectWrapper<Word> answer = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyObjectWrapper<Mark> mark = new ReadOnlyObjectWrapper<>(Mark.UNKNOWN);
    private final ReadOnlyIntegerWrapper asked = new ReadOnlyIntegerWrapper();
    private final ReadOnlyIntegerWrapper right = new ReadOnlyIntegerWrapper();

    PracticeQuiz(Random surprise) {
        this.surprise = surprise;
    }

    /** The run is over: keeps what gave the fault away. */
    void over(RunRecord run) {
        giveaway.setAll(VerdictRows.giveaway(run));
    }

    /** Draws what there is to choose from. */
    void ask(PracticeUnit unit) {
        guesses.setAll(drawGuesses(unit));
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

    /** Counts a guess, and tells what it was. */
    void guessed(Fault guess, PracticeUnit unit) {
        asked.set(asked.get() + 1);
        boolean hit = unit.fault().equals(guess);
        if (hit) {
            right.set(right.get() + 1);
        }
        tell(unit, hit ? Mark.GOOD : Mark.BAD, hit ? "ui.practice.right" : "ui.practice.wrong");
    }

    /** Tells what it was; nobody had to guess. */
    void tell(PracticeUnit unit) {
        tell(unit, Mark.GOOD, "ui.practice.it_was");
    }

    private void tell(PracticeUnit unit, Mark how, String key) {
        mark.set(how);
        boolean healthy = unit.fault().equals(PracticeUnit.faults(unit.kind()).get(0));
        Word name = PracticeModel.name(unit.fault());
        Word what = healthy ? name : Word.of("ui.practice.how_much", name, PracticeModel.word(unit.severity()));
        answer.set(Word.of(key, what, Word.stored(unit.fault().sentence())));
    }

    /** Everything but the tally is forgotten. */
    void clear() {
        guesses.clear();
        giveaway.clear();
        answer.set(Word.NONE);
        mark.set(Mark.UNKNOWN);
    }

    /** What there is to guess from. */
    public ObservableList<Fault> guesses() {
        return guessesShown;
    }

    /** What gave the fault away. */
    public ObservableList<Row> giveaway() {
        return giveawayShown;
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
