package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PumpPlantTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();
    private static final double[] FULL = {1};

    @Test
    void theFlowFollowsADutyStepWithTheLinesTimeConstant() {
        Bench bench = Bench.of(HEALTHY);
        bench.hold(1, HEALTHY.stand().lineSettlingSeconds());

        double reached = bench.gallonsPerMinute() / Bench.gpm(PumpSteadyState.of(HEALTHY, 1));

        assertThat(reached).isCloseTo(1 - 1 / Math.E, within(0.01));
    }

    @Test
    void aStandingUnitNeedsMoreDutyToStartThanATurningOneToKeepOn() {
        double between = 0.135;
        Bench fromRest = Bench.of(HEALTHY);
        Bench fromAbove = Bench.of(HEALTHY);
        fromAbove.hold(0.20, 5);

        fromRest.hold(between, 5);
        fromAbove.hold(between, 5);

        assertThat(fromRest.gallonsPerMinute()).isZero();
        assertThat(fromAbove.gallonsPerMinute()).isBetween(0.05, 0.3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.002, 0.002})
    void theMovingUnitStartsAtTheStartDutyOfTheSteadyState(double beside) {
        Bench bench = Bench.of(HEALTHY);

        bench.hold(PumpSteadyState.startDuty(HEALTHY) + beside, 2);

        assertThat(bench.gallonsPerMinute() > 0).isEqualTo(beside > 0);
    }

    @Test
    void aTurningUnitStopsWhenTheDutyNoLongerCarriesItsRunningFriction() {
        Bench bench = Bench.of(HEALTHY);
        bench.hold(0.20, 5);

        PlantReading last = bench.hold(0.10, 20);

        assertThat(last.pressurePa()).isCloseTo(0, within(1e-6));
        assertThat(last.amps())
                .as("standstill current")
                .isCloseTo(PumpSteadyState.of(HEALTHY, 0.10).batteryAmps(), within(1e-3));
    }

    @Test
    void anOpenContactorTakesVoltsAndAmpsAwayAndThePumpRunsOut() {
        Bench bench = Bench.of(HEALTHY);
        bench.hold(1, 5);

        PlantReading off = bench.plant.step(0.01, FULL, false);
        assertThat(off.voltsAtPins()).isZero();
        assertThat(off.amps()).isZero();
        assertThat(off.pressurePa()).as("the hose empties slowly").isPositive();
        for (int i = 0; i < 1000; i++) {
            off = bench.plant.step(0.01, FULL, false);
        }
        assertThat(off.pressurePa()).isCloseTo(0, within(1e-3));
        assertThat(off.edgeOffsetsSeconds()[0]).isEmpty();
    }

    @Test
    void aSeizedUnitDrawsTheSuppliesLimitAndGivesNoPulse() {
        Bench bench = Bench.of(PumpFault.SEIZED.applyTo(HEALTHY, Severity.SEVERE));

        PlantReading r = bench.hold(1, 1);

        assertThat(r.amps()).isCloseTo(35, within(1e-9));
        assertThat(r.voltsAtPins()).isBetween(6.0, 8.5);
        assertThat(bench.takeEdges()).isEmpty();
    }

    @Test
    void anOpenCircuitIsVoltsWithoutAmps() {
        Bench bench = Bench.of(PumpFault.OPEN_CIRCUIT.applyTo(HEALTHY, Severity.SEVERE));

        PlantReading r = bench.hold(1, 1);

        assertThat(r.amps()).isCloseTo(0, within(1e-6));
        assertThat(r.voltsAtPins()).isCloseTo(13.8, within(1e-6));
    }

    @Test
    void againstAClosedOutletThePressureBuildsUpAndNothingFlows() {
        PumpParameters closed = HEALTHY.withStand(HEALTHY.stand().withOutlet(0, 0));
        Bench bench = Bench.of(closed);

        PlantReading r = bench.hold(1, 6);

        assertThat(r.pressurePa())
                .isCloseTo(PumpSteadyState.deadHead(HEALTHY, 1).pressurePa(), within(2e3));
        assertThat(bench.takeEdges()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void everyFaultAtEverySeverityRunsWithFiniteReadingsAndOrderedEdges(PumpFault fault) {
        for (Severity severity : Severity.values()) {
            PumpPlant plant =
                    new PumpPlant(fault.applyTo(new PumpPopulation(5).unit(3), severity), SensorErrors.drawn(9), 4);
            for (int i = 0; i < 1000; i++) {
                double duty = Math.min(1, i / 700.0);
                PlantReading r = plant.step(0.02, new double[] {duty, 0.5}, true);
                double[] edges = r.edgeOffsetsSeconds()[0];
                assertThat(r.voltsAtPins() + r.amps() + r.pressurePa() + r.waterTemperatureKelvin())
                        .isFinite();
                assertThat(edges).isSorted().doesNotHaveDuplicates();
                assertThat(Arrays.stream(edges).allMatch(e -> e >= 0 && e <= 0.02))
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"HEALTHY", "BRUSH", "SUCTION_AIR"})
    void theSameSeedGivesTheSameRunToTheBitAndAnotherSeedAnotherOne(PumpFault fault) {
        PumpParameters p = fault.applyTo(HEALTHY, Severity.SEVERE);

        assertThat(fingerprint(p, 77)).isEqualTo(fingerprint(p, 77)).isNotEqualTo(fingerprint(p, 78));
    }

    @Test
    void longAndShortStepsTellTheSameStory() {
        PumpPlant fine = new PumpPlant(HEALTHY, SensorErrors.none(), 3);
        PumpPlant coarse = new PumpPlant(HEALTHY, SensorErrors.none(), 3);
        double[] duty = {0.7};
        int fineEdges = 0;
        int coarseEdges = 0;
        for (int i = 0; i < 6000; i++) {
            fineEdges += fine.step(0.005, duty, true).edgeOffsetsSeconds()[0].length;
        }
        for (int i = 0; i < 1500; i++) {
            coarseEdges += coarse.step(0.020, duty, true).edgeOffsetsSeconds()[0].length;
        }
        PlantReading fineEnd = fine.step(0.005, duty, true);
        PlantReading coarseEnd = coarse.step(0.020, duty, true);

        assertThat(coarseEdges).isCloseTo(fineEdges, within(1));
        assertThat(coarseEnd.amps()).isCloseTo(fineEnd.amps(), within(1e-3));
        assertThat(coarseEnd.pressurePa()).isCloseTo(fineEnd.pressurePa(), within(5.0));
    }

    @Test
    void nonsenseIsRefusedWithValueAndLimit() {
        PumpPlant plant = new PumpPlant(HEALTHY, SensorErrors.none(), 1);

        assertThatThrownBy(() -> plant.step(0.01, new double[] {1.2}, true))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("duty 1.20000 is outside 0.00000 to 1.00000");
        assertThatThrownBy(() -> plant.step(Double.NaN, FULL, true)).hasMessageContaining("step NaN s is outside");
        assertThatThrownBy(() -> plant.step(0, FULL, true)).hasMessageContaining("step 0.00000 s is outside");
        assertThatThrownBy(() -> plant.step(0.01, new double[0], true))
                .hasMessage("no duty given: the pump hangs on drive 0");
    }

    private static long fingerprint(PumpParameters p, long seed) {
        PumpPlant plant = new PumpPlant(p, SensorErrors.drawn(seed), seed);
        long mixed = 17;
        for (int i = 0; i < 6000; i++) {
            PlantReading r = plant.step(0.01, new double[] {(i % 1000) / 999.0}, i % 2500 != 0);
            mixed = 31 * mixed + Arrays.hashCode(r.edgeOffsetsSeconds()[0]);
            mixed = 31 * mixed + Double.doubleToLongBits(r.amps());
            mixed = 31 * mixed + Double.doubleToLongBits(r.voltsAtPins());
            mixed = 31 * mixed + Double.doubleToLongBits(r.pressurePa());
            mixed = 31 * mixed + Double.doubleToLongBits(r.waterTemperatureKelvin());
        }
        return mixed;
    }
}
