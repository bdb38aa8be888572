package org.pumpwright.benchmarks.judgement;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.run.Operator;

/** The person at the simulated stand, who does what the plan asks for and sees nothing amiss. Confined to the run thread. */
final class TestPerson implements Operator {
    private final Plant plant;
    private @Nullable String answer;

    TestPerson(Plant plant) {
        this.plant = plant;
    }

    @Override
    public boolean isThere() {
        return true;
    }

    @Override
    public void ask(Ask question) {
        answer = question.answers().get(0).word();
        question.simulated().forEach(plant::adjust);
    }

    @Override
    public Optional<String> answer() {
        Optional<String> given = Optional.ofNullable(answer);
        answer = null;
        return given;
    }

    @Override
    public boolean wantsPause() {
        return false;
    }
}
