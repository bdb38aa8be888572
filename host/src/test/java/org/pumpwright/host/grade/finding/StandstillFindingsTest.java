package org.pumpwright.host.grade.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.plant.MotorParameters;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Uncertain;

class StandstillFindingsTest {
    private static Plan plan(double percent) {
        return StepRun.plan(
                UnitKind.PUMP_12V,
                new Hold("standstill", Reading.STANDSTILL, Duty.ofPercent(percent), 3, 0.5, 3, 1, 0));
    }

    /** What stands between the pins at this duty: the winding, and the brushes' drop over the current. */
    private static double truth(PumpParameters unit, double duty) {
        MotorParameters m = unit.motor();
        double feed = unit.stand().supplyOhms() + unit.stand().leadOhms();
        double drive = duty * unit.stand().openCircuitVolts()
                - (1 - duty) * unit.stand().freewheelVolts();
        double amps = (drive - m.brushVolts()) / (m.resistanceOhms() + duty * duty * feed);
        return m.resistanceOhms() + m.brushVolts() / amps;
    }

    @Test
    void resistancesOfSimulatedUnitsHoldTheTruthAsOftenAsStated() {
        PumpPopulation population = new PumpPopulation(4711);
        int held = 0;
        int measured = 0;
        double relative = 0;
        for (int i = 0; i < 100; i++) {
            PumpParameters unit = population.unit(i);
            double percent = 95 * RampFindingsTest.breakaway(unit);
            List<Finding> findings = StepRun.findings(
                    new PumpPlant(unit, SensorErrors.drawn(i), i), plan(percent), StepBench.channels());
            if (StepBench.named(findings, "resistance at rest").outcome() instanceof Finding.Figure figure) {
                Uncertain ohms = figure.value();
                measured++;
                relative += ohms.relative();
                held += StepBench.holds(
                                ohms, truth(unit, Duty.ofPercent(percent).fraction()))
                        ? 1
                        : 0;
            }
        }
        assertThat(measured).as("of 100 units").isGreaterThanOrEqualTo(90);
        assertThat(held)
                .as("of %d, %.1f %% on average", measured, 100 * relative / measured)
                .isGreaterThanOrEqualTo((int) (0.95 * measured));
    }

    @Test
    void aShaftThatTurnsGivesNoResistance() {
        PumpPlant unit = new PumpPlant(new PumpPopulation(4711).unit(0), SensorErrors.drawn(0), 0);
        List<Finding> findings = StepRun.findings(unit, plan(40), StepBench.channels());
        assertThat(StepBench.word(findings, "resistance at rest")).isEqualTo("not measured");
        assertThat(StepBench.named(findings, "resistance at rest").note()).contains("the shaft turned");
    }

    /** A run of two minutes at full duty makes the winding warmer; the model tells by how much. */
    @Test
    void theWindingIsReadWarmAfterASoak() {
        PumpParameters unit = new PumpPopulation(4711).unit(3);
        double percent = 95 * RampFindingsTest.breakaway(unit);
        Plan plan = StepRun.plan(
                UnitKind.PUMP_12V,
                new Hold("cold", Reading.STANDSTILL, Duty.ofPercent(percent), 3, 0.5, 3, 1, 0),
                new Hold("soak", Reading.SOAK, Duty.FULL, 240, 0.5, 1, 5, 0),
                new Hold("hot", Reading.STANDSTILL, Duty.ofPercent(percent), 2, 0.5, 1, 0, 0));
        PumpPlant plant = new PumpPlant(unit, SensorErrors.drawn(3), 3);
        List<Finding> findings = StepRun.findings(plant, plan, StepBench.channels());
        assertThat(StepBench.named(findings, "winding temperature").step()).isEqualTo("hot");
        Uncertain celsius = StepBench.value(findings, "winding temperature");
        double truth = plant.windingKelvin() - 273.15;
        assertThat(celsius.value() - 2 * celsius.standardUncertainty()).isLessThan(truth);
    }
}
