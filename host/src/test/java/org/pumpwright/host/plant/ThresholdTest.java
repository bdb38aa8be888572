package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the moving unit starts and stops when the duty creeps by 1 % a second, as a slow ramp does on the stand. */
class ThresholdTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();
    private static final double PER_STEP = 0.01 * Bench.STEP_SECONDS;

    /** The shaft turns at 15.11 %; the first pulses need half a second of line lag more. */
    @Test
    void onASlowRampTheFirstPulseComesAtFifteenAndAHalfPercent() {
        assertThat(100 * firstPulseDuty(HEALTHY, 1)).isCloseTo(15.5, within(0.35));
    }

    @Test
    void onTheWayDownItStopsBelowWhereItStarted() {
        Bench bench = Bench.of(HEALTHY);
        bench.hold(0.20, 5);
        double duty = 0.20;
        while (bench.gallonsPerMinute() > 0.06 && duty > 0) {
            duty -= PER_STEP;
            bench.hold(duty, Bench.STEP_SECONDS);
        }

        assertThat(duty).isBetween(0.11, 0.135);
    }

    @Test
    void nineteenOfTwentyHealthyUnitsStartBetweenThirteenAndNineteenPercent() {
        PumpPopulation population = new PumpPopulation(31);
        double[] starts = IntStream.range(0, 80)
                .mapToDouble(i -> 100 * firstPulseDuty(population.unit(i), i))
                .sorted()
                .toArray();

        long within = IntStream.range(0, starts.length)
                .filter(i -> starts[i] >= 13 && starts[i] <= 19.6)
                .count();
        assertThat(within).isGreaterThanOrEqualTo(72);
        assertThat(starts[40]).isCloseTo(15.5, within(0.6));
    }

    @ParameterizedTest(name = "{0} starts near {1} %")
    @CsvSource({
        "DRAG, 22, 0.8",
        "BRUSH, 23, 4",
        "LOW_SUPPLY, 18, 0.8",
        "DEAD_CHAMBER, 15.5, 0.6",
        "SUCTION_AIR, 15.5, 0.6",
        "SLIP, 15.5, 0.6",
        "COLD_STIFF, 22, 2"
    })
    void moderateFaultsMoveTheStartAsTheAtlasSays(PumpFault fault, double percent, double within) {
        double start = 100 * firstPulseDuty(fault.applyTo(HEALTHY, Severity.MODERATE), 2);

        assertThat(start).isCloseTo(percent, within(within));
    }

    @Test
    void aMotorAtEightyDegreesNeedsMoreToStart() {
        PumpParameters hot = PumpFault.WARM.applyTo(HEALTHY, Severity.SEVERE);

        assertThat(100 * firstPulseDuty(hot, 1)).isCloseTo(18, within(1.0));
    }

    @Test
    void againstTrappedPressureItNeedsMuchMoreToStartAgain() {
        Bench bench = Bench.of(HEALTHY);
        bench.plant.turnOutletValve(0);
        bench.hold(0.5, 4);
        double trapped = bench.hold(0, 2).pressurePa();
        double duty = 0;
        double before = trapped;
        double now = trapped;
        while (now <= before && duty < 1) {
            before = now;
            duty += PER_STEP;
            now = bench.hold(duty, Bench.STEP_SECONDS).pressurePa();
        }

        OperatingCurve curve = new OperatingCurve(HEALTHY, duty, 293.15, 0);
        assertThat(trapped / UsUnits.PSI).isGreaterThan(25);
        assertThat(duty).isGreaterThan(0.3);
        assertThat(curve.breaksAway(before)).isTrue();
    }

    /** Duty at the first pulse of a ramp from 5 %. */
    private static double firstPulseDuty(PumpParameters p, long seed) {
        Bench bench = new Bench(p, SensorErrors.none(), seed);
        double duty = 0.05;
        while (bench.takeEdges().length == 0 && duty < 0.6) {
            duty += PER_STEP;
            bench.hold(duty, Bench.STEP_SECONDS);
        }
        return duty;
    }
}
