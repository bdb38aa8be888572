package org.pumpwright.host.grade.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Ramp;
import org.pumpwright.host.plant.MotorParameters;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.PumpSteadyState;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Uncertain;

class RampFindingsTest {
    private static Plan plan(double percentPerSecond) {
        return StepRun.plan(
                UnitKind.PUMP_12V, new Ramp("ramp", Duty.ofPercent(5), Duty.ofPercent(45), percentPerSecond, true));
    }

    private static List<Finding> findings(MadePlant plant) {
        return StepRun.findings(plant, plan(1), StepBench.channels());
    }

    /** Flow from 20 % of duty on and down to 15 %. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void theTrueThresholdsLieWithinTheStatedIntervals(long seed) {
        boolean[] turning = {false};
        List<Finding> findings = findings(new MadePlant(seed).hertz((seconds, duty) -> {
            turning[0] = turning[0] ? duty > 0.15 : duty >= 0.20;
            return turning[0] ? 400 * duty : 0;
        }));
        Uncertain start = StepBench.value(findings, "start duty");
        Uncertain stop = StepBench.value(findings, "stop duty");
        assertThat(start.value()).isCloseTo(0.20, within(2 * start.standardUncertainty()));
        assertThat(stop.value()).isCloseTo(0.15, within(2 * stop.standardUncertainty()));
        assertThat(start.standardUncertainty()).isBetween(0.0028, 0.0035);
    }

    /** The duty at which a standing motor's current makes its breakaway torque, by Ohm's law. */
    static double breakaway(PumpParameters unit) {
        MotorParameters m = unit.motor();
        double amps = m.breakawayNewtonMetre() / m.torqueConstant();
        double feed = unit.stand().supplyOhms() + unit.stand().leadOhms();
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double duty = (low + high) / 2;
            double volts = duty * (unit.stand().openCircuitVolts() - duty * amps * feed)
                    - (1 - duty) * unit.stand().freewheelVolts()
                    - m.brushVolts();
            if (volts / m.resistanceOhms() < amps) {
                low = duty;
            } else {
                high = duty;
            }
        }
        return (low + high) / 2;
    }

    /** Where the standing unit turns, or for one that turns without pumping, where it gives what moves the meter. */
    private static double firstWater(PumpParameters unit) {
        double low = breakaway(unit);
        double high = 1;
        if (pumps(unit, low + 1e-6)) {
            return low;
        }
        for (int i = 0; i < 30; i++) {
            double duty = (low + high) / 2;
            if (pumps(unit, duty)) {
                high = duty;
            } else {
                low = duty;
            }
        }
        return high;
    }

    private static boolean pumps(PumpParameters unit, double duty) {
        return unit.meter().pulsesPerSecond(PumpSteadyState.of(unit, duty).flowM3PerSecond()) > 0;
    }

    @Test
    void startDutiesOfSimulatedUnitsHoldTheTruthAsOftenAsStated() {
        PumpPopulation population = new PumpPopulation(4711);
        int held = 0;
        double worst = 0;
        for (int i = 0; i < 100; i++) {
            PumpParameters unit = population.unit(i);
            List<Finding> findings =
                    StepRun.findings(new PumpPlant(unit, SensorErrors.drawn(i), i), plan(1), StepBench.channels());
            Uncertain start = StepBench.value(findings, "start duty");
            double off = Math.abs(start.value() - firstWater(unit)) / start.standardUncertainty();
            held += off <= 2 ? 1 : 0;
            worst = Math.max(worst, off);
        }
        assertThat(held)
                .as("of 100, the worst %.2f standard uncertainties off", worst)
                .isGreaterThanOrEqualTo(95);
    }

    @Test
    void aUnitThatDoesNotStartSaysSo() {
        List<Finding> findings = findings(new MadePlant(1));
        assertThat(StepBench.word(findings, "start duty")).isEqualTo("no start");
        assertThat(StepBench.named(findings, "start duty").note()).isEqualTo("no lasting flow up to 45 %");
        assertThat(StepBench.word(findings, "stop duty")).isEqualTo("not measured");
    }

    @Test
    void aUnitThatAlwaysRunsHasNoThresholds() {
        List<Finding> findings = findings(new MadePlant(1).hertz((seconds, duty) -> 50));
        assertThat(StepBench.word(findings, "start duty")).isEqualTo("not measured");
        assertThat(StepBench.word(findings, "stop duty")).isEqualTo("no stop");
    }

    /** Water runs down for three seconds into the ramp; the unit starts at 20 %. */
    @Test
    void whatRunsDownFromBeforeIsNoStart() {
        List<Finding> findings = findings(new MadePlant(1).hertz((seconds, duty) -> {
            if (seconds < 5.5) {
                return 20;
            }
            return duty >= 0.20 ? 400 * duty : 0;
        }));
        Uncertain start = StepBench.value(findings, "start duty");
        assertThat(start.value()).isCloseTo(0.20, within(2 * start.standardUncertainty()));
    }
}
