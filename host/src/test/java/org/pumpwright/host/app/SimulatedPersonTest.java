package org.pumpwright.host.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;

final class SimulatedPersonTest {
    private static final Ask OUTLET = new Ask(
            "outlet",
            "Close the outlet.",
            List.of(new Ask.Answer("done", Optional.empty()), new Ask.Answer("cannot", Optional.empty())),
            Map.of("outlet", 0.0));

    private final List<String> adjusted = new ArrayList<>();
    private final Plant plant = new Plant() {
        @Override
        public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
            throw new UnsupportedOperationException("nothing runs here");
        }

        @Override
        public void adjust(String setting, double value) {
            adjusted.add(setting + "=" + value);
        }
    };

    @Test
    void theUsualAnswerIsTheFirstAndWhatItAsksForIsDone() {
        SimulatedPerson person = new SimulatedPerson(plant, Map.of());

        person.ask(OUTLET);

        assertThat(person.answer()).contains("done");
        assertThat(person.answer()).isEmpty();
        assertThat(adjusted).containsExactly("outlet=0.0");
    }

    @Test
    void anotherAnswerLeavesTheUnitAsItIs() {
        SimulatedPerson person = new SimulatedPerson(plant, Map.of("outlet", "cannot"));

        person.ask(OUTLET);

        assertThat(person.answer()).contains("cannot");
        assertThat(adjusted).isEmpty();
    }

    @Test
    void theUsualAnswerCountsHoweverItIsWritten() {
        SimulatedPerson person = new SimulatedPerson(plant, Map.of("outlet", " Done"));

        person.ask(OUTLET);

        assertThat(adjusted).containsExactly("outlet=0.0");
    }

    @Test
    void whatIsNoAnswerIsGivenOnceAndThenTheUsualOne() {
        SimulatedPerson person = new SimulatedPerson(plant, Map.of("outlet", "whatever"));

        person.ask(OUTLET);
        assertThat(person.answer()).contains("whatever");
        person.ask(OUTLET);

        assertThat(person.answer()).contains("done");
    }
}
