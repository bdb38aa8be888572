package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Step;
import org.pumpwright.host.trace.Answer;

/** What a person saw that ends the matter, whatever the figures say: before the run, or when the plan asked. Thread-safe. */
final class SafetyFirst {
    private SafetyFirst() {}

    static List<String> observations(GradingInput input) {
        List<String> seen = new ArrayList<>(input.intake().safetyObservations());
        for (Answer answer : input.trace().answers()) {
            held(input.plan(), answer).ifPresent(seen::add);
        }
        return seen;
    }

    /** What an answer that the plan holds against the unit says of it. */
    private static Optional<String> held(Plan plan, Answer answer) {
        for (Step step : plan.steps()) {
            if (step instanceof Ask ask && ask.name().equals(answer.step())) {
                return ask.answer(answer.word())
                        .flatMap(Ask.Answer::end)
                        .filter(end -> end.blame() == Ask.Blame.UNIT)
                        .map(Ask.End::reason);
            }
        }
        return Optional.empty();
    }
}
