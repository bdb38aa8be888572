package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.grade.CauseAtlas.Split;
import org.pumpwright.host.grade.CausePattern.Change;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpSteadyState;
import org.pumpwright.host.plant.Severity;

class CauseAtlasTest {
    private static final CauseAtlas ATLAS = CauseAtlas.standard();
    private static final PumpParameters HEALTHY = PumpParameters.healthy();
    private static final Map<String, PumpFault> MODELLED = Map.ofEntries(
            Map.entry("slip-back", PumpFault.SLIP),
            Map.entry("dead-chamber", PumpFault.DEAD_CHAMBER),
            Map.entry("bypass-low", PumpFault.BYPASS_LOW),
            Map.entry("drag", PumpFault.DRAG),
            Map.entry("weak-magnets", PumpFault.WEAK_MAGNETS),
            Map.entry("brush", PumpFault.BRUSH),
            Map.entry("shorted-turns", PumpFault.SHORTED_TURNS),
            Map.entry("suction-air", PumpFault.SUCTION_AIR),
            Map.entry("nozzle-plugged", PumpFault.NOZZLE_PLUGGED),
            Map.entry("nozzle-worn", PumpFault.NOZZLE_WORN),
            Map.entry("recirculation-open", PumpFault.RECIRCULATION_OPEN));

    /**
     * Each figure of the atlas against the pump model, both at the same effective volts. The atlas was computed apart from
     * this program, so a slip in either would show; 1 % of healthy is the printed digit and the curve's interpolation.
     */
    @ParameterizedTest
    @CsvSource({
        "slip-back",
        "dead-chamber",
        "bypass-low",
        "drag",
        "weak-magnets",
        "brush",
        "shorted-turns",
        "suction-air",
        "nozzle-plugged",
        "nozzle-worn",
        "recirculation-open"
    })
    void theFiguresAreThoseOfThePumpModel(String id) {
        CausePattern cause = cause(id);
        for (int s = 0; s < Severity.values().length; s++) {
            PumpParameters faulty = MODELLED.get(id).applyTo(HEALTHY, Severity.values()[s]);
            Change change = cause.severities().get(s);
            for (int i = 0; i < ATLAS.dutyPercent().size(); i++) {
                PumpSteadyState found =
                        PumpSteadyState.of(faulty, ATLAS.dutyPercent().get(i) / 100);
                PumpSteadyState healthy = healthyAt(effectiveVolts(found));
                String at = id + " " + Severity.values()[s] + " at "
                        + ATLAS.dutyPercent().get(i);
                double flow = percent(found.flowM3PerSecond(), healthy.flowM3PerSecond());
                double amps = percent(found.motorAmps(), healthy.motorAmps());
                assertThat(change.flowPercent().get(i)).as("flow, " + at).isCloseTo(flow, within(1.0));
                assertThat(change.motorAmpsPercent().get(i))
                        .as("motor amps, " + at)
                        .isCloseTo(amps, within(1 + 0.02 * Math.abs(amps)));
            }
        }
    }

    private static CausePattern cause(String id) {
        return ATLAS.causes().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double percent(double found, double healthy) {
        return 100 * (found / healthy - 1);
    }

    private static double effectiveVolts(PumpSteadyState state) {
        return state.duty() * state.terminalVolts() - (1 - state.duty()) * Bench.FREEWHEEL_VOLTS;
    }

    /** The healthy unit at these effective volts: by its duty, and beyond full duty by a higher supply. */
    private static PumpSteadyState healthyAt(double volts) {
        double low = 0.1;
        double high = 1.2;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (effectiveVolts(healthyDriven(middle)) < volts) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return healthyDriven(high);
    }

    private static PumpSteadyState healthyDriven(double duty) {
        if (duty <= 1) {
            return PumpSteadyState.of(HEALTHY, duty);
        }
        PumpParameters higher = HEALTHY.withStand(HEALTHY.stand()
                .withFeed(
                        HEALTHY.stand().openCircuitVolts() * duty,
                        HEALTHY.stand().leadOhms()));
        return PumpSteadyState.of(higher, 1);
    }

    @Test
    void everyCauseSaysWhatItIsAndWhatToDo() {
        assertThat(ATLAS.causes()).hasSizeGreaterThan(12).allSatisfy(cause -> {
            assertThat(cause.name()).isNotBlank();
            assertThat(cause.pattern()).isNotBlank();
            assertThat(cause.nextTest()).isNotBlank();
        });
        assertThat(ATLAS.about()).contains("docs/metrology/plant.md").contains("common practice, no source");
    }

    @Test
    void figuresAreReadBetweenTheSetPoints() {
        List<Double> figures = List.of(-10.0, -20.0, -30.0, -50.0);
        assertThat(ATLAS.at(figures, 30)).isEqualTo(-10);
        assertThat(ATLAS.at(figures, 40)).isEqualTo(-15);
        assertThat(ATLAS.at(figures, 100)).isEqualTo(-50);
        assertThat(ATLAS.reaches(20)).isFalse();
        assertThat(ATLAS.reaches(30)).isTrue();
    }

    private static CausePattern pattern(String id, int figures) {
        List<Double> row = Collections.nCopies(figures, 1.0);
        return new CausePattern(id, id, id, id, false, false, List.of(new Change(row, row)));
    }

    @Test
    void aCauseWithAMissingFigureIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CauseAtlas("", List.of(30.0, 50.0), List.of(pattern("drag", 1)), List.of()))
                .withMessage("cause drag needs 2 figures of flow and of motor amps at each severity");
    }

    @Test
    void aCauseGivenTwiceIsRefused() {
        List<CausePattern> twice = List.of(pattern("drag", 2), pattern("drag", 2));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CauseAtlas("", List.of(30.0, 50.0), twice, List.of()))
                .withMessage("cause drag is given twice");
    }

    @Test
    void aSplitBetweenUnknownCausesIsRefused() {
        List<Split> splits = List.of(new Split(Set.of("drag", "rust"), "look"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CauseAtlas("", List.of(30.0, 50.0), List.of(pattern("drag", 2)), splits))
                .withMessageStartingWith("a split is not between two known causes: ");
    }
}
