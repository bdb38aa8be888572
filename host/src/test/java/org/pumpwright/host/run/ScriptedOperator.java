package org.pumpwright.host.run;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Ask;

/** Answers a plan's questions with words given beforehand, in their order. */
final class ScriptedOperator implements Operator {
    private final Deque<String> words;
    private final List<String> asked = new ArrayList<>();
    private boolean open;
    private boolean pause;

    ScriptedOperator(String... words) {
        this.words = new ArrayDeque<>(List.of(words));
    }

    /** The names of the steps whose questions were put. */
    List<String> asked() {
        return asked;
    }

    void pauseSoon() {
        pause = true;
    }

    @Override
    public boolean isThere() {
        return true;
    }

    @Override
    public void ask(Ask question) {
        asked.add(question.name());
        open = true;
    }

    @Override
    public Optional<String> answer() {
        if (!open || words.isEmpty()) {
            return Optional.empty();
        }
        open = false;
        return Optional.of(words.remove());
    }

    @Override
    public boolean wantsPause() {
        boolean wanted = pause;
        pause = false;
        return wanted;
    }
}
