package org.pumpwright.host.ui.work;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.run.Operator;

/** The person at the bucket, as the run thread sees him: asked by the screen, answering with its keys. Thread-safe. */
final class BucketPerson implements Operator {
    private final Consumer<String> asked;
    private final AtomicReference<Optional<String>> answer = new AtomicReference<>(Optional.empty());

    /** @param asked hears, on the run thread, the name of what the person is to do */
    BucketPerson(Consumer<String> asked) {
        this.asked = asked;
    }

    void give(String text) {
        answer.set(Optional.of(text));
    }

    @Override
    public boolean isThere() {
        return true;
    }

    @Override
    public void ask(Ask question) {
        answer.set(Optional.empty());
        asked.accept(question.name());
    }

    @Override
    public Optional<String> answer() {
        return answer.getAndSet(Optional.empty());
    }

    @Override
    public boolean wantsPause() {
        return false;
    }
}
