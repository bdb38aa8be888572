package org.pumpwright.host.ui.work;

import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.run.Operator;

/** The person at the window, as a run sees him: questions go to the screen, answers come back by a queue. Thread-safe. */
final class DeskOperator implements Operator {
    private final Consumer<Ask> asked;
    private final LinkedBlockingQueue<String> answers = new LinkedBlockingQueue<>();
    private final AtomicBoolean pause = new AtomicBoolean();

    /**
     * Somebody is there.
     *
     * @param asked takes each question, on the run thread; must return at once
     */
    DeskOperator(Consumer<Ask> asked) {
        this.asked = asked;
    }

    @Override
    public boolean isThere() {
        return true;
    }

    @Override
    public void ask(Ask question) {
        answers.clear();
        asked.accept(question);
    }

    @Override
    public Optional<String> answer() {
        return Optional.ofNullable(answers.poll());
    }

    @Override
    public boolean wantsPause() {
        return pause.getAndSet(false);
    }

    void answered(String word) {
        answers.add(word);
    }

    void pauseSoon() {
        pause.set(true);
    }
}
