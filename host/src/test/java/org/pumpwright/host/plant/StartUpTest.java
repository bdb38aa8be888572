package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The first minutes: priming, purging, thawing, a lead that warms; and the outlet valve. */
class StartUpTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();

    /** 1 m of lift through about 2 m of half-inch hose and the head, in litres. */
    private static final double DRY_LITRES = 0.35;

    @Test
    void aHealthyUnitPrimesOverAMetreWithinHalfAMinute() {
        assertThat(secondsToFirstPulse(HEALTHY, 0.8)).isBetween(1.0, 30.0);
    }

    @Test
    void aUnitWithBadlyWornValvesPumpsFloodedAndDoesNotPrime() {
        PumpParameters worn = PumpFault.SLIP.applyTo(HEALTHY, Severity.SEVERE);

        assertThat(secondsToFirstPulse(worn, 0.3)).isInfinite();
        assertThat(Bench.gpm(PumpSteadyState.of(worn, 0.3))).isGreaterThan(0.8);
    }

    @Test
    void aFloodedSuctionGivesFlowAtOnce() {
        Bench bench = Bench.of(HEALTHY);
        bench.hold(0.8, 0.5);

        assertThat(bench.takeEdges()).isNotEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void airLeftInTheHosesDecaysWithTheVolumeThatPasses(Severity severity) {
        Bench bench = Bench.of(PumpFault.HOSES_UNPURGED.applyTo(HEALTHY, severity));
        double early = variationAfter(bench, 3, 3);
        double late = variationAfter(bench, 60, 20);

        assertThat(early).isGreaterThan(variationAfter(Bench.of(HEALTHY), 3, 3) + 0.001);
        assertThat(late).as("that of a meter without air").isLessThan(0.025);
        assertThat(bench.gallonsPerMinute()).isCloseTo(Bench.gpm(PumpSteadyState.of(HEALTHY, 0.6)), within(0.03));
    }

    @Test
    void coldStiffDiaphragmsDrawMoreInTheFirstMinuteAndAreSuppleAfterThree() {
        for (Severity severity : Severity.values()) {
            Bench cold = Bench.of(PumpFault.COLD_STIFF.applyTo(HEALTHY, severity));
            Bench supple = Bench.of(HEALTHY);

            double first = cold.hold(0.3, 5).amps() / supple.hold(0.3, 5).amps() - 1;
            double later = cold.hold(0.3, 235).amps() / supple.hold(0.3, 235).amps() - 1;

            assertThat(first).as("first minute, " + severity).isBetween(0.15, 0.42);
            assertThat(later).isBetween(0.0, 0.03);
        }
    }

    @Test
    void aBadLeadJointWarmsUntilItsResistanceHasDoubled() {
        Bench bench = Bench.of(PumpFault.LEAD_RESISTANCE.applyTo(HEALTHY, Severity.SEVERE));
        PlantReading cold = bench.hold(1, 3);
        PlantReading hot = bench.hold(1, 300);

        double coldOhms = (13.8 - cold.voltsAtPins()) / cold.amps();
        double hotOhms = (13.8 - hot.voltsAtPins()) / hot.amps();
        assertThat(coldOhms).isBetween(0.55, 0.60);
        assertThat(hotOhms).isCloseTo(0.03 + 2 * 0.52, within(0.03));
    }

    @Test
    void withTheOutletClosedThePumpReachesItsDeadHeadAndHoldsItStanding() {
        Bench bench = Bench.of(HEALTHY);
        bench.plant.turnOutletValve(0);
        PlantReading dead = bench.hold(1, 5);
        double trapped = bench.hold(0, 0.1).pressurePa();
        double later = bench.hold(0, 30).pressurePa();

        assertThat(dead.pressurePa() / UsUnits.PSI).isCloseTo(94.5, within(1.0));
        assertThat(dead.amps()).isCloseTo(23.8, within(0.3));
        assertThat(1 - later / trapped).as("loss in 30 s").isBetween(0.005, 0.1);
    }

    @Test
    void wornValvesLoseMoreThanAFifthOfTheTrappedPressureInHalfAMinute() {
        Bench bench = Bench.of(PumpFault.SLIP.applyTo(HEALTHY, Severity.MODERATE));
        bench.plant.turnOutletValve(0);
        bench.hold(0.5, 5);
        double trapped = bench.hold(0, 0.1).pressurePa();

        assertThat(1 - bench.hold(0, 30).pressurePa() / trapped).isGreaterThan(0.2);
    }

    @Test
    void aHalfOpenValveIsASmallerNozzle() {
        Bench bench = Bench.of(HEALTHY);
        bench.plant.turnOutletValve(0.6);
        PlantReading r = bench.hold(0.75, 8);
        PumpSteadyState s = PumpSteadyState.of(PumpFault.NOZZLE_PLUGGED.applyTo(HEALTHY, Severity.MODERATE), 0.75);

        assertThat(r.pressurePa()).isCloseTo(s.pressurePa(), within(0.01 * s.pressurePa()));
    }

    /** Variation of the pulse intervals of some seconds, after others. */
    private static double variationAfter(Bench bench, double before, double seconds) {
        bench.hold(0.6, before);
        bench.takeEdges();
        bench.hold(0.6, seconds);
        return Intervals.between(bench.takeEdges()).variation();
    }

    private static double secondsToFirstPulse(PumpParameters p, double duty) {
        LineParameters dry = p.stand().lines().withDrySuction(DRY_LITRES / 1000, 1);
        Bench bench = Bench.of(p.withStand(p.stand().withLines(dry)));
        for (int i = 1; i < 6000; i++) {
            bench.hold(duty, Bench.STEP_SECONDS);
            if (bench.takeEdges().length > 0) {
                return i * Bench.STEP_SECONDS;
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
