package org.pumpwright.host.ui.work;

import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Handling;

/** What a unit has pumped, and whether it may be put on the stand as it is. JavaFX thread only. */
public final class Rinsing {
    private final ObjectProperty<Optional<Product>> product = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.NOT_SAID);
    private Optional<String> cleanBy = Optional.empty();
    private Optional<Decision> answering = Optional.empty();

    /** Whether it is clean. */
    public enum State {
        /** Nobody has said: it stays off the stand. */
        NOT_SAID,
        /** Somebody has made sure that it was drained and rinsed. */
        CLEAN,
        /** It was not, and a named person answers for it. */
        ANSWERED_FOR
    }

    /** Whoever tests has made sure that it was drained and rinsed. */
    public void clean() {
        cleanBy = Optional.empty();
        answering = Optional.empty();
        state.set(State.CLEAN);
    }

    /**
     * It was not rinsed, and is tested all the same.
     *
     * @param person who answers for it
     * @param reason why
     */
    public void answer(String person, String reason) {
        cleanBy = Optional.empty();
        answering = Optional.of(new Decision(person.strip(), reason.strip()));
        state.set(State.NOT_SAID);
        state.set(State.ANSWERED_FOR);
    }

    /** Nobody has said anything after all. */
    public void unsay() {
        cleanBy = Optional.empty();
        answering = Optional.empty();
        state.set(State.NOT_SAID);
    }

    /** What a claim says already. */
    void known(Handling handling) {
        if (handling.cleanBy().isPresent()) {
            cleanBy = handling.cleanBy();
            answering = Optional.empty();
            state.set(State.CLEAN);
        } else {
            handling.uncleaned().ifPresent(person -> answer(person.by(), person.reason()));
        }
    }

    /**
     * As the record keeps it.
     *
     * @param technician who has made sure, where nobody else has
     * @param named what the product is called; empty where only its kind is known
     */
    Handling handling(String technician, Optional<String> named) {
        Optional<String> pumped = named.or(() -> product.get().map(Product::stored));
        return switch (state.get()) {
            case NOT_SAID -> new Handling(pumped, Optional.empty(), Optional.empty());
            case CLEAN -> new Handling(pumped, cleanBy.or(() -> Optional.of(technician)), Optional.empty());
            case ANSWERED_FOR -> new Handling(pumped, Optional.empty(), answering);
        };
    }

    void clear() {
        product.set(Optional.empty());
        unsay();
    }

    /** How it stands, in words. */
    public Word word() {
        return switch (state.get()) {
            case NOT_SAID -> Word.of("ui.receive.rinsed.not_said");
            case CLEAN ->
                cleanBy.map(person -> Word.of("ui.receive.rinsed.by", person)).orElse(Word.of("ui.receive.rinsed.yes"));
            case ANSWERED_FOR ->
                Word.of("ui.receive.rinsed.not", answering.map(Decision::by).orElse(""));
        };
    }

    /** What the unit has pumped. */
    public ObjectProperty<Optional<Product>> productProperty() {
        return product;
    }

    /** Whether it is clean. */
    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }
}
