package org.pumpwright.host.grade.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.driver.DriverParameters;
import org.pumpwright.host.plant.driver.DriverPlant;
import org.pumpwright.host.plant.driver.DriverStand;
import org.pumpwright.host.plant.driver.DummyLoad;
import org.pumpwright.host.plant.harness.HarnessParameters;
import org.pumpwright.host.plant.harness.HarnessPlant;
import org.pumpwright.host.plant.harness.HarnessState;
import org.pumpwright.host.plant.meter.MeterBench;
import org.pumpwright.host.plant.meter.MeterPlant;
import org.pumpwright.host.plant.meter.SignalDefects;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.quantity.UnitSystem;

/** Meters, harnesses and drivers, whose truth the plants tell. */
class OtherUnitsFindingsTest {
    private static final Plan METER = StepRun.plan(UnitKind.METER, StepBench.sweep(6, 40, 70, 100));

    /** The truth: the returned meter's pulses at the flow that really passed, which the nominal master's K error hides. */
    @Test
    void theKOfReturnedMetersHoldsTheTruthAsOftenAsStated() {
        int held = 0;
        int all = 0;
        for (int seed = 0; seed < 40; seed++) {
            MeterBench bench = MeterBench.small();
            MeterBench wrong = bench.withUnit(bench.unit().withRatio(1 + 0.01 * (seed - 20)));
            MeterPlant plant = new MeterPlant(wrong.unit(), wrong.loop(), SensorErrors.drawn(seed), seed);
            List<Finding> findings = StepRun.findings(plant, METER, StepBench.channels());
            for (int percent : List.of(40, 70, 100)) {
                double flow = bench.loop().steadyFlow(percent / 100.0);
                double truth = wrong.unit().pulsesPerSecond(flow) / flow;
                Uncertain k = StepBench.value(findings, "K at %d %%, up".formatted(percent));
                held += StepBench.holds(k, truth) ? 1 : 0;
                all++;
            }
        }
        assertThat(held).as("of %d", all).isGreaterThanOrEqualTo((int) (0.93 * all));
    }

    @Test
    void theInterferenceOfTheDriveIsFoundAtAClosedOutlet() {
        Plan plan = StepRun.plan(
                UnitKind.METER,
                StepBench.ask("close", Map.of("outlet", 0.0)),
                StepBench.hold("settle", Reading.NOTHING, 50, 10),
                StepBench.hold("zero", Reading.ZERO_FLOW, 50, 30));
        MeterBench bench = MeterBench.small();
        MeterPlant plant = new MeterPlant(
                bench.unit().withSignal(new SignalDefects(0, 0, 0, 0.005)), bench.loop(), SensorErrors.drawn(1), 1);
        List<Finding> findings = StepRun.findings(
                StepRun.trace(plant, plan, StepBench.channels()),
                plan,
                bench.loop().driveHertz());
        assertThat(StepBench.word(findings, "master meter: pulses")).isEqualTo("none");
        assertThat(StepBench.value(findings, "returned meter: pulses").value()).isPositive();
        assertThat(StepBench.word(findings, "returned meter: in step with the drive"))
                .isEqualTo("yes");
    }

    /** The fuse holder lies between points 1 and 2; loads of 5, 10 and 15 A. */
    @Test
    void theResistanceOfAPlaceIsTheSlopeOverItsLoads() {
        HarnessParameters harness = HarnessParameters.healthy();
        Plan plan = StepRun.plan(
                UnitKind.HARNESS,
                StepBench.ask("whole-lead", Map.of("probe-high", 0.0, "probe-low", 5.0)),
                StepBench.hold("third", Reading.LOAD, 33, 10),
                StepBench.hold("full", Reading.LOAD, 100, 10),
                StepBench.ask("fuse-holder", Map.of("probe-high", 1.0, "probe-low", 2.0)),
                StepBench.hold("fuse-third", Reading.LOAD, 33, 10),
                StepBench.hold("fuse-full", Reading.LOAD, 100, 10));
        for (int seed = 0; seed < 20; seed++) {
            List<Finding> findings = StepRun.findings(
                    new HarnessPlant(harness, SensorErrors.drawn(seed), seed), plan, StepBench.channels());
            Finding whole = findings.stream()
                    .filter(f -> f.step().equals("whole-lead"))
                    .findFirst()
                    .orElseThrow();
            Uncertain ohms = ((Finding.Figure) whole.outcome()).value();
            assertThat(ohms.value()).isCloseTo(slope(harness, 0, 5), within(2.5 * ohms.standardUncertainty()));
            assertThat(ohms.standardUncertainty()).isLessThan(0.002);
            assertThat(StepBench.value(findings, "volts").standardUncertainty()).isLessThan(0.05);
            assertThat(findings).filteredOn(f -> f.name().equals("resistance")).hasSize(2);
        }
    }

    private static double slope(HarnessParameters harness, int high, int low) {
        HarnessState third = HarnessState.of(harness, 0.33 * HarnessPlant.FULL_LOAD_AMPS);
        HarnessState full = HarnessState.of(harness, HarnessPlant.FULL_LOAD_AMPS);
        double drop = full.voltsAtPoints().get(high) - full.voltsAtPoints().get(low);
        double dropBefore =
                third.voltsAtPoints().get(high) - third.voltsAtPoints().get(low);
        return (drop - dropBefore) / (full.amps() - third.amps());
    }

    @Test
    void aDriverGivesVoltsAndAmpsForEachLoadAndNoResistance() {
        DriverPlant plant = new DriverPlant(
                DriverParameters.healthy(), DriverStand.with(DummyLoad.resistor()), SensorErrors.drawn(1), 1);
        Plan plan = StepRun.plan(
                UnitKind.DRIVER,
                StepBench.hold("half", Reading.LOAD, 50, 5),
                StepBench.hold("full", Reading.LOAD, 100, 5));
        List<Finding> findings = StepRun.findings(plant, plan, StepBench.channels());
        assertThat(findings).filteredOn(f -> f.name().equals("volts")).hasSize(2);
        assertThat(findings).filteredOn(f -> f.name().equals("amps")).hasSize(2);
        assertThat(findings).noneMatch(f -> f.name().equals("resistance"));
    }

    @Test
    void theFlowOfTheMasterStandsBesideEachK() {
        MeterBench bench = MeterBench.small();
        MeterPlant plant = new MeterPlant(bench.unit(), bench.loop(), SensorErrors.none(), 1);
        List<Finding> findings = StepRun.findings(plant, METER, StepBench.channels());
        String flow = new FlowRate(bench.loop().steadyFlow(0.7)).print(UnitSystem.US);
        assertThat(StepBench.named(findings, "K at 70 %, up").note()).startsWith("master: " + flow.substring(0, 3));
    }
}
