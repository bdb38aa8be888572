package org.pumpwright.host.grade.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.Uncertain;

class SweepFindingsTest {
    private static final Plan PLAN = StepRun.plan(UnitKind.PUMP_12V, StepBench.sweep(8, 20, 30, 50, 75, 100));

    private static List<Finding> findings(MadePlant plant) {
        return StepRun.findings(plant, PLAN, StepBench.channels());
    }

    private static MadePlant even(long seed) {
        return new MadePlant(seed).hertz((t, duty) -> 200 * duty).pascals((t, duty) -> 3e5 * duty * duty);
    }

    /** 2 % more flow on the way down at 50 %, beside a warm-up of 0.3 % a minute. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void hysteresisIsToldFromWarmUp(long seed) {
        double[] highest = {0};
        List<Finding> findings = findings(new MadePlant(seed).hertz((t, duty) -> {
            highest[0] = Math.max(highest[0], duty);
            boolean down = highest[0] > 0.9 && duty > 0.4 && duty < 0.6;
            return 200 * (duty + (down ? 0.02 : 0)) * (1 + 0.003 * t / 60);
        }));
        Uncertain share = StepBench.value(findings, "hysteresis");
        assertThat(share.value()).isCloseTo(0.02, within(3 * share.standardUncertainty()));
        assertThat(share.standardUncertainty()).isLessThan(0.0015);
        assertThat(StepBench.named(findings, "hysteresis").note()).contains("largest at 50 %, down way more");
    }

    /** A first-order lag of 0.6 s after the drive's half second: within 5 % after about 1.8 s to 2.3 s. */
    @Test
    void theSettlingTimeIsThatOfTheSlowestPoint() {
        double[] state = {0};
        List<Finding> findings = findings(new MadePlant(1).hertz((t, duty) -> {
            state[0] += (200 * duty - state[0]) * (1 - Math.exp(-0.02 / 0.6));
            return state[0];
        }));
        Uncertain settling = StepBench.value(findings, "settling time");
        assertThat(settling.value()).isBetween(1.3, 2.5);
        assertThat(settling.standardUncertainty()).isBetween(0.1, 0.2);
    }

    @Test
    void aStepOfTheFlowSettlesWhenItCame() {
        List<Finding> findings = findings(new MadePlant(1).hertz((t, duty) -> t < 3.5 && duty > 0 ? 20 : 200 * duty));
        Uncertain settling = StepBench.value(findings, "settling time");
        assertThat(settling.value()).isCloseTo(2.0, within(2 * settling.standardUncertainty()));
    }

    @Test
    void aFlowThatNeverSettlesSaysSo() {
        List<Finding> findings =
                findings(new MadePlant(1).hertz((t, duty) -> 200 * duty * (1 + 0.3 * Math.sin(2 * Math.PI * 0.2 * t))));
        assertThat(StepBench.word(findings, "settling time")).isEqualTo("not steady");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.04, 0.08, 0.2})
    void aSurgeIsMeasured(double peakToPeak) {
        List<Finding> findings = findings(even(1).pascals((t, duty) ->
                40 * Pressure.PASCALS_PER_PSI * duty * (1 + peakToPeak / 2 * Math.sin(2 * Math.PI * 1.3 * t))));
        Uncertain surge = StepBench.value(findings, "surge of the pressure");
        assertThat(surge.value()).isCloseTo(peakToPeak, within(2.5 * surge.standardUncertainty()));
        assertThat(StepBench.named(findings, "surge of the pressure").note()).contains("a wave of 1.3");
    }

    @Test
    void withoutSurgeNothingLiesWithinTheInterval() {
        Uncertain surge = StepBench.value(findings(even(1)), "surge of the pressure");
        assertThat(surge.value() - 2 * surge.standardUncertainty()).isLessThanOrEqualTo(0);
        assertThat(surge.value()).isLessThan(0.03);
    }

    @Test
    void evenPulsesAreHealthyWhereEveryEdgeIsKnown() {
        List<Finding> findings = findings(even(1));
        assertThat(findings)
                .filteredOn(f -> f.name().equals("pulses"))
                .extracting(f -> ((Finding.Word) f.outcome()).word())
                .containsExactly("even", "healthy");
    }

    @Test
    void aSimulatedUnitGivesEveryReadingOfASweep() {
        PumpPlant unit = new PumpPlant(new PumpPopulation(4711).unit(0), SensorErrors.drawn(0), 0);
        List<Finding> findings = StepRun.findings(unit, PLAN, StepBench.channels());
        assertThat(findings).extracting(Finding::name).contains("hysteresis", "settling time", "pulses");
        assertThat(Math.abs(StepBench.value(findings, "hysteresis").value())).isLessThan(0.02);
    }
}
