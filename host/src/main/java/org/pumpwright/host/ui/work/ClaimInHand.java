package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import org.pumpwright.host.claim.UnitAsReceived;

/** The claim that a unit comes in for: its number, and what the desk knows of it. JavaFX thread only. */
public final class ClaimInHand {
    private final Background background;
    private final ClaimLookup desk;
    private final StringProperty number = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.NONE);
    private final ReadOnlyObjectWrapper<Optional<ClaimLookup.Known>> known =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    /** How much is known of a number. */
    public enum State {
        /** There is no number. */
        NONE(Mark.UNKNOWN),
        /** It was typed, and nobody has asked the desk yet. */
        TYPED(Mark.UNKNOWN),
        /** The desk is being asked. */
        ASKED(Mark.UNKNOWN),
        /** The desk has this claim. */
        FOUND(Mark.GOOD),
        /** The desk has no such claim: it is another shop's, or a number of the job. */
        NOT_AT_DESK(Mark.WATCH),
        /** The desk did not answer. */
        NO_ANSWER(Mark.WATCH);

        private final Mark mark;

        State(Mark mark) {
            this.mark = mark;
        }

        /** How that stands. */
        public Mark mark() {
            return mark;
        }

        /** In words. */
        public Word word() {
            return Word.of("ui.receive.claim." + name().toLowerCase(Locale.ROOT));
        }
    }

    ClaimInHand(Background background, ClaimLookup desk) {
        this.background = background;
        this.desk = desk;
        number.addListener((observed, old, now) -> {
            if (!old.strip().equals(now.strip())) {
                known.set(Optional.empty());
                state.set(now.isBlank() ? State.NONE : State.TYPED);
            }
        });
    }

    /** Asks the desk for the number, unless it was asked already. */
    public void lookUp() {
        lookUp(() -> {});
    }

    /**
     * The same.
     *
     * @param then is done once the desk has answered, or at once when there is nothing to ask
     */
    void lookUp(Runnable then) {
        if (state.get() != State.TYPED && state.get() != State.NO_ANSWER) {
            then.run();
            return;
        }
        String asked = typed();
        state.set(State.ASKED);
        background.run(
                () -> desk.find(asked),
                found -> answered(asked, found.isPresent() ? State.FOUND : State.NOT_AT_DESK, found, then),
                failure -> {
                    background.trouble(Trouble.of(failure));
                    answered(asked, State.NO_ANSWER, Optional.empty(), then);
                });
    }

    private void answered(String asked, State how, Optional<ClaimLookup.Known> found, Runnable then) {
        // Another number may have been typed meanwhile.
        if (asked.equals(typed()) && state.get() == State.ASKED) {
            known.set(found);
            state.set(how);
            then.run();
        }
    }

    private String typed() {
        return number.get().strip();
    }

    /** The number; empty when there is none. */
    Optional<String> given() {
        return Optional.of(typed()).filter(each -> !each.isEmpty());
    }

    /** What the desk knows has changed. */
    void knows(ClaimLookup.Known now) {
        known.set(Optional.of(now));
    }

    /**
     * What does not fit the unit at hand.
     *
     * @param model id of what it is; empty while nobody has said
     * @param serial as read from its plate; blank while nobody has
     */
    List<Word> differences(Optional<String> model, String serial) {
        List<Word> found = new ArrayList<>();
        known.get().flatMap(ClaimLookup.Known::serial).ifPresent(there -> {
            if (!serial.isBlank() && !there.equalsIgnoreCase(serial.strip())) {
                found.add(Word.of("ui.receive.differs.serial", said(there), said(serial.strip())));
            }
        });
        known.get()
                .ifPresent(claim -> claim.model().ifPresent(there -> {
                    if (model.isPresent() && !model.get().equals(there)) {
                        found.add(Word.of(
                                "ui.receive.differs.model", claim.title().orElse(there)));
                    }
                }));
        return found;
    }

    private static Word said(String serial) {
        return WorkOrder.serialWord(serial.equalsIgnoreCase(UnitAsReceived.NO_PLATE) ? WorkOrder.NO_PLATE : serial);
    }

    /** The number. */
    public StringProperty numberProperty() {
        return number;
    }

    /** How much is known of it. */
    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** What the desk knows, to be read; empty without a claim at the desk. */
    public ObservableValue<List<Fact>> facts() {
        return known.map(found -> found.map(KnownFacts::of).orElse(List.of()));
    }

    /** What the desk knows; empty without a claim at the desk. */
    public ReadOnlyObjectProperty<Optional<ClaimLookup.Known>> knownProperty() {
        return known.getReadOnlyProperty();
    }
}
