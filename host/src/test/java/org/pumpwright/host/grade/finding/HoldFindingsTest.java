package org.pumpwright.host.grade.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.Uncertain;

/** Starts, pulses without flow, dead-head, prime and zero command, on plants whose truth is known. */
class HoldFindingsTest {
    private static List<Finding> findings(MadePlant plant, Hold hold) {
        return StepRun.findings(plant, StepRun.plan(UnitKind.PUMP_12V, hold), StepBench.channels());
    }

    private static Hold starts(int times) {
        return new Hold("starts", Reading.STARTS, Duty.ofPercent(60), 3, 0.1, times, 2, 0);
    }

    /** Flow begins 0.4 s after the command, which comes every 5 s from 1.5 s on; the third time the unit stays. */
    @Test
    void startsAreCountedAndTimed() {
        MadePlant plant = new MadePlant(1).hertz((t, duty) -> {
            double since = (t - 1.5) % 5;
            boolean stays = (int) ((t - 1.5) / 5) == 2;
            return t > 1.5 && since > 0.4 && since < 3 && !stays ? 120 : 0;
        });
        List<Finding> findings = findings(plant, starts(10));
        assertThat(StepBench.word(findings, "starts")).isEqualTo("9 of 10");
        Uncertain time = StepBench.value(findings, "time to run");
        assertThat(time.value()).isCloseTo(0.4, within(2 * time.standardUncertainty()));
        assertThat(time.standardUncertainty()).isLessThan(0.02);
    }

    /** 0.05^(1/10), and 0.606 for 9 of 10: exact one-sided limits by the binomial distribution. */
    @Test
    void tenOfTenStartsPromiseThreeOfFour() {
        assertThat(StartsFindings.leastShare(10, 10)).isCloseTo(Math.pow(0.05, 0.1), within(1e-9));
        double share = StartsFindings.leastShare(9, 10);
        assertThat(10 * Math.pow(share, 9) * (1 - share) + Math.pow(share, 10)).isCloseTo(0.05, within(1e-9));
        assertThat(StartsFindings.leastShare(0, 10)).isZero();
    }

    @Test
    void aMeterThatIsStillWithoutFlowHasAnUpperBound() {
        List<Finding> findings = findings(new MadePlant(1), StepBench.hold("zero", Reading.ZERO_FLOW, 50, 30));
        assertThat(StepBench.word(findings, "pulses")).isEqualTo("none");
        assertThat(StepBench.named(findings, "pulses").note()).isEqualTo("in 28.0 s: fewer than 0.11 a second at 95 %");
    }

    @Test
    void pulsesOutOfStepWithTheDriveAreNotItsDoing() {
        List<Finding> findings = findings(
                new MadePlant(1).hertz((t, duty) -> duty > 0.4 ? 5.3 : 0),
                StepBench.hold("zero", Reading.ZERO_FLOW, 50, 30));
        Uncertain hertz = StepBench.value(findings, "pulses");
        assertThat(hertz.value()).isCloseTo(5.3, within(2 * hertz.standardUncertainty()));
        assertThat(StepBench.word(findings, "in step with the drive")).isEqualTo("no");
    }

    @Test
    void theFlowAtZeroCommandIsBelowWhatTheMeterCanTell() {
        List<Finding> findings = findings(new MadePlant(1), StepBench.hold("off", Reading.ZERO_COMMAND, 0, 20));
        Uncertain flow = StepBench.value(findings, "flow at zero command");
        assertThat(flow.value()).isZero();
        assertThat(flow.standardUncertainty())
                .isCloseTo(FlowRate.ofGallonsPerMinute(0.4).m3PerSecond() / Math.sqrt(12), within(1e-8));
    }

    @Test
    void aLeakAtZeroCommandIsMeasured() {
        double truth = FlowRate.ofGallonsPerMinute(1).m3PerSecond();
        List<Finding> findings =
                findings(new MadePlant(1).hertz((t, duty) -> 50), StepBench.hold("off", Reading.ZERO_COMMAND, 0, 20));
        Uncertain flow = StepBench.value(findings, "flow at zero command");
        assertThat(flow.value()).isCloseTo(truth, within(2 * flow.standardUncertainty()));
    }

    @Test
    void theDeadHeadGivesPressureAndAmps() {
        double pascals = 60 * Pressure.PASCALS_PER_PSI;
        MadePlant plant =
                new MadePlant(1).pascals((t, duty) -> duty > 0.9 ? pascals : 0).amps((t, duty) -> duty > 0.9 ? 9.4 : 0);
        List<Finding> findings = findings(plant, StepBench.hold("dead-head", Reading.DEAD_HEAD, 100, 3));
        Uncertain pressure = StepBench.value(findings, "pressure, outlet closed");
        Uncertain amps = StepBench.value(findings, "supply amps, outlet closed");
        assertThat(pressure.value()).isCloseTo(pascals, within(2 * pressure.standardUncertainty()));
        assertThat(amps.value()).isCloseTo(9.4, within(2 * amps.standardUncertainty()));
        assertThat(StepBench.named(findings, "pressure, outlet closed").note()).doesNotContain("not closed");
    }

    /** Air until 8 s, froth until 12 s, then water; the hold begins at 1.5 s. */
    @Test
    void primingEndsWithTheFirstSteadyFlow() {
        MadePlant plant = new MadePlant(1).hertz((t, duty) -> {
            if (duty < 0.4 || t < 8) {
                return 0;
            }
            return t < 12 ? 60 + 40 * Math.sin(3 * t) : 150;
        });
        List<Finding> findings = findings(plant, StepBench.hold("prime", Reading.PRIME, 50, 40));
        Uncertain steady = StepBench.value(findings, "time to steady flow");
        assertThat(steady.value()).isCloseTo(10.5, within(2 * steady.standardUncertainty()));
        assertThat(steady.standardUncertainty()).isLessThan(0.2);
    }

    @Test
    void aUnitThatDoesNotPrimeSaysSo() {
        List<Finding> findings = findings(new MadePlant(1), StepBench.hold("prime", Reading.PRIME, 50, 40));
        assertThat(StepBench.word(findings, "time to steady flow")).isEqualTo("no steady flow");
    }

    @Test
    void aSimulatedUnitStartsEveryTime() {
        PumpPlant unit = new PumpPlant(new PumpPopulation(4711).unit(0), SensorErrors.drawn(0), 0);
        List<Finding> findings =
                StepRun.findings(unit, StepRun.plan(UnitKind.PUMP_12V, starts(5)), StepBench.channels());
        assertThat(StepBench.word(findings, "starts")).isEqualTo("5 of 5");
    }

    /** Water of the first start runs on slowly for the whole rest and beyond; the other times the unit does not start. */
    @Test
    void whatStillRunsFromBeforeIsNoStart() {
        MadePlant plant =
                new MadePlant(1).hertz((t, duty) -> t < 4.5 ? 120 * Math.min(1, duty / 0.6) : t < 7.5 ? 8 : 0);
        List<Finding> findings = findings(plant, starts(3));
        assertThat(StepBench.word(findings, "starts")).isEqualTo("1 of 3");
    }
}
