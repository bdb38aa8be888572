package org.pumpwright.host.ui.work;

import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.plan.Ask;

/** What a run asks the person at the bench: the plan's questions, and why it was stopped. JavaFX thread only. */
public final class RunQuestions {
    private final ReadOnlyObjectWrapper<Optional<Ask>> question = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper asksWhy = new ReadOnlyBooleanWrapper();
    private @Nullable DeskOperator person;
    private @Nullable RunFeed feed;

    /** A run begins: these take the answers. */
    void begin(DeskOperator answering, RunFeed told) {
        person = answering;
        feed = told;
    }

    void ask(Ask asked) {
        // Taken away first: a question that is put again is new to whoever shows it.
        question.set(Optional.empty());
        question.set(Optional.of(asked));
    }

    void askWhy() {
        asksWhy.set(true);
    }

    /** The plan's question is answered or void. */
    void answered() {
        question.set(Optional.empty());
    }

    /** Nothing is asked any more. */
    void end() {
        asksWhy.set(false);
        question.set(Optional.empty());
    }

    /** Has the run pause before its next point. */
    void pauseSoon() {
        if (person != null) {
            person.pauseSoon();
        }
    }

    /** Answers the question that stands. */
    public void answer(Ask.Answer answer) {
        answered();
        if (person != null) {
            person.answered(answer.word());
        }
    }

    /** Says why the run was stopped; empty when nobody wants to. */
    public void because(Optional<WhyStopped> why) {
        asksWhy.set(false);
        if (feed != null) {
            feed.said(why.map(WhyStopped::words));
        }
    }

    /** The plan's question that waits for an answer. */
    public ReadOnlyObjectProperty<Optional<Ask>> questionProperty() {
        return question.getReadOnlyProperty();
    }

    /** Whether somebody is to say why the run was stopped. */
    public ReadOnlyBooleanProperty asksWhyProperty() {
        return asksWhy.getReadOnlyProperty();
    }
}
