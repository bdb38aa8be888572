package org.pumpwright.host.app;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.run.Operator;

/**
 * The person at a simulated stand: does what a plan asks for to the simulated unit, and gives the usual answer, or the one
 * that was given beforehand. Confined to the run thread.
 */
final class SimulatedPerson implements Operator {
    private final Plant plant;
    private final Map<String, String> given;
    private @Nullable String answer;

    SimulatedPerson(Plant plant, Map<String, String> given) {
        this.plant = plant;
        this.given = new HashMap<>(given);
    }

    @Override
    public boolean isThere() {
        return true;
    }

    @Override
    public void ask(Ask question) {
        Ask.Answer usual = question.answers().get(0);
        // Once: an answer that is none would be given for ever.
        String beforehand = given.remove(question.name());
        answer = beforehand == null ? usual.word() : beforehand;
        if (question.answer(answer).filter(usual::equals).isPresent()) {
            question.simulated().forEach(plant::adjust);
        }
    }

    @Override
    public Optional<String> answer() {
        String given = answer;
        answer = null;
        return Optional.ofNullable(given);
    }

    @Override
    public boolean wantsPause() {
        return false;
    }
}
