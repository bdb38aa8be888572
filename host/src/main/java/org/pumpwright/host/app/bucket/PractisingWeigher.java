package org.pumpwright.host.app.bucket;

import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.run.Operator;

/**
 * A real person at a simulated bucket: what he answers swings the simulated diverter, and where he types no weight the simulated scale
 * is read. Confined to the run thread.
 */
final class PractisingWeigher implements Operator {
    private final SimulatedBench bench;
    private final Operator person;
    private String question = "";

    PractisingWeigher(SimulatedBench bench, Operator person) {
        this.bench = bench;
        this.person = person;
    }

    @Override
    public boolean isThere() {
        return person.isThere();
    }

    @Override
    public void ask(Ask asked) {
        question = asked.name();
        if (question.equals("tare")) {
            bench.empty();
        }
        person.ask(asked);
    }

    @Override
    public Optional<String> answer() {
        return person.answer().map(this::done);
    }

    private String done(String answer) {
        if (question.startsWith("swing")) {
            bench.swing(question.equals("swing-in"));
            return answer;
        }
        return answer.isBlank() ? String.format(Locale.ROOT, "%.0f", bench.shownGrams()) : answer;
    }

    @Override
    public boolean wantsPause() {
        return person.wantsPause();
    }
}
