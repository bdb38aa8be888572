package org.pumpwright.host.grade.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.quantity.Uncertain;

class SoakFindingsTest {
    private static final double BEGIN_SECONDS = 1.5;

    private static Plan plan(double seconds) {
        return StepRun.plan(UnitKind.PUMP_12V, StepBench.hold("soak", Reading.SOAK, 50, seconds));
    }

    private static MadePlant drifting(long seed, double flowShare, double ampsShare) {
        return new MadePlant(seed)
                .hertz((t, duty) -> duty < 0.4 ? 0 : 103 * (1 + flowShare * (t - 60) / 600))
                .amps((t, duty) -> duty < 0.4 ? 0 : 4 * (1 + ampsShare * (t - 60) / 600));
    }

    @Test
    void driftsOfSeededUnitsHoldTheTruthAsOftenAsStated() {
        Random drawn = new Random(20260402);
        int flowHeld = 0;
        int ampsHeld = 0;
        for (int i = 0; i < 200; i++) {
            double flow = 0.03 * drawn.nextGaussian();
            double amps = 0.05 * drawn.nextGaussian();
            List<Finding> findings = StepRun.findings(drifting(i, flow, amps), plan(120), StepBench.channels());
            flowHeld += StepBench.holds(StepBench.value(findings, "drift of the flow"), flow) ? 1 : 0;
            ampsHeld += StepBench.holds(StepBench.value(findings, "drift of the amps"), amps) ? 1 : 0;
        }
        assertThat(flowHeld).as("flow, of 200").isBetween(185, 200);
        assertThat(ampsHeld).as("amps, of 200").isBetween(185, 200);
    }

    @Test
    void twoMinutesTellADriftOfAFlowToATenthOfAPercent() {
        List<Finding> findings = StepRun.findings(drifting(1, 0.01, 0.02), plan(120), StepBench.channels());
        assertThat(StepBench.value(findings, "drift of the flow").standardUncertainty())
                .isLessThan(0.001);
        assertThat(StepBench.value(findings, "drift of the amps").standardUncertainty())
                .isLessThan(0.01);
        assertThat(StepBench.word(findings, "thermal trip")).isEqualTo("none");
    }

    @Test
    void aWarmingSimulatedUnitDrawsLessAsTimeGoesBy() {
        PumpPlant unit = new PumpPlant(new PumpPopulation(4711).unit(1), SensorErrors.drawn(1), 1);
        List<Finding> findings = StepRun.findings(unit, plan(300), StepBench.channels());
        Uncertain flow = StepBench.value(findings, "drift of the flow");
        assertThat(flow.standardUncertainty()).isLessThan(0.01);
        assertThat(Math.abs(flow.value())).isLessThan(0.1);
    }

    /** Opens 100 s after the begin of the run, closes 40 s later. */
    @Test
    void aTripIsTimedAndItsResetToo() {
        MadePlant plant = new MadePlant(1)
                .hertz((t, duty) -> duty < 0.4 || (t > 100 && t < 140) ? 0 : 103)
                .amps((t, duty) -> duty < 0.4 || (t > 100 && t < 140) ? 0 : 6);
        List<Finding> findings = StepRun.findings(plant, plan(200), StepBench.channels());
        Uncertain trip = StepBench.value(findings, "thermal trip");
        assertThat(trip.value()).isCloseTo(100 - BEGIN_SECONDS, within(0.15));
        assertThat(StepBench.value(findings, "reset").value()).isCloseTo(40, within(0.2));
        assertThat(StepBench.value(findings, "drift of the flow").value()).isCloseTo(0, within(0.005));
    }

    @Test
    void aTripWithoutResetSaysSo() {
        MadePlant plant = new MadePlant(1)
                .hertz((t, duty) -> duty < 0.4 || t > 50 ? 0 : 103)
                .amps((t, duty) -> duty < 0.4 || t > 50 ? 0 : 6);
        List<Finding> findings = StepRun.findings(plant, plan(100), StepBench.channels());
        assertThat(StepBench.word(findings, "reset")).isEqualTo("not seen");
    }

    @Test
    void aSoakWithoutFlowHasNoDrift() {
        List<Finding> findings = StepRun.findings(new MadePlant(1), plan(60), StepBench.channels());
        assertThat(StepBench.word(findings, "drift of the flow")).isEqualTo("not measured");
        assertThat(StepBench.word(findings, "drift of the amps")).isEqualTo("not measured");
    }

    /** The plug opens for 0.1 s every 10 s. */
    @Test
    void dropOutsOfTheCurrentAreCounted() {
        MadePlant plant = new MadePlant(1)
                .hertz((t, duty) -> duty < 0.4 ? 0 : 103)
                .amps((t, duty) -> duty < 0.4 || t % 10 < 0.1 ? 0 : 6);
        List<Finding> findings = StepRun.findings(plant, plan(60), StepBench.channels());
        assertThat(StepBench.word(findings, "drop-outs")).isEqualTo("6");
        assertThat(StepBench.word(findings, "thermal trip")).isEqualTo("none");
        assertThat(StepBench.word(StepRun.findings(drifting(1, 0, 0), plan(60), StepBench.channels()), "drop-outs"))
                .isEqualTo("none");
    }
}
