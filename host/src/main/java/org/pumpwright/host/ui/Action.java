package org.pumpwright.host.ui;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanExpression;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;

/**
 * One of the six big actions: its word, whether it can be done now, and what it does. Its place in the screen's list is its key, F1 to
 * F6. JavaFX thread only.
 */
public final class Action {
    private static final BooleanExpression ALWAYS = new ReadOnlyBooleanWrapper(true).getReadOnlyProperty();
    private static final Action NOTHING = new Action(
            new ReadOnlyStringWrapper(""), new ReadOnlyBooleanWrapper(false).getReadOnlyProperty(), false, () -> {});

    private final ObservableValue<String> word;
    private final BooleanExpression enabled;
    private final boolean first;
    private final Runnable deed;

    private Action(ObservableValue<String> word, BooleanExpression enabled, boolean first, Runnable deed) {
        this.word = word;
        this.enabled = enabled;
        this.first = first;
        this.deed = deed;
    }

    /**
     * An action that can always be done.
     *
     * @param word as the button says it, at best one or two words: {@code saying.text("ui.stand.check")}
     * @param deed must return at once; long work goes to {@code Background}
     */
    public static Action of(ObservableValue<String> word, Runnable deed) {
        return new Action(word, ALWAYS, false, deed);
    }

    /** Leaves a place of the six empty, so that the others keep their keys. */
    public static Action nothing() {
        return NOTHING;
    }

    /** One action at F1 and one at F6, nothing between: what a form or a question is left by. */
    public static List<Action> atTheEnds(Action first, Action last) {
        return List.of(first, NOTHING, NOTHING, NOTHING, NOTHING, last);
    }

    /** The same action, to be done only while this holds. */
    public Action when(ObservableBooleanValue possible) {
        return new Action(word, Bindings.and(enabled, possible), first, deed);
    }

    /** The same action, shown as the one to do next. */
    public Action asNext() {
        return new Action(word, enabled, true, deed);
    }

    /** What its button says. */
    public ObservableValue<String> word() {
        return word;
    }

    /** Whether it can be done now. */
    public BooleanExpression enabled() {
        return enabled;
    }

    /** Whether it is shown as the one to do next. */
    public boolean isNext() {
        return first;
    }

    /** True for an empty place. */
    public boolean isNothing() {
        return this == NOTHING;
    }

    /** Does it, when it can be done. */
    public void perform() {
        if (enabled.get()) {
            deed.run();
        }
    }
}
