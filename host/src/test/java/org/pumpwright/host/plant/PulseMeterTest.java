package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.pumpwright.host.plant.UsUnits.GALLON_M3;
import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PulseMeterTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();
    private static final MeterParameters METER = HEALTHY.meter();

    @Property(seed = "20260101", tries = 100)
    void theEdgesOfAChangingFlowAreItsIntegralTimesK(
            @ForAll @DoubleRange(min = 0.3, max = 5) double from, @ForAll @DoubleRange(min = 0.3, max = 5) double to) {
        PulseMeter meter = meter(METER, 0, 11);
        EdgeTimes edges = new EdgeTimes();
        double expected = 0;
        int parts = 4000;
        double part = 0.005;
        for (int i = 0; i < parts; i++) {
            double flow = (from + (to - from) * i / parts) * GALLON_PER_MINUTE;
            meter.pass(flow, i * part, part, edges);
            expected += METER.pulsesPerM3AtInfiniteFlow() * (flow - METER.lagM3PerSecond()) * part;
        }

        assertThat((double) edges.take().length).isCloseTo(expected, within(1.2));
    }

    @Test
    void aLongRunsCountIsTheFlowTimesKAndRepeats() {
        double seconds = 600;
        Bench bench = Bench.of(HEALTHY);
        double expected = 0;
        int count = 0;
        for (int i = 0; i < seconds; i++) {
            for (int j = 0; j < 100; j++) {
                bench.hold(0.8, 0.01);
                double flow = bench.gallonsPerMinute() * GALLON_PER_MINUTE;
                expected += METER.pulsesPerSecond(flow) * 0.01;
            }
            count += bench.takeEdges().length;
        }
        Bench again = Bench.of(HEALTHY);
        again.hold(0.8, seconds);

        assertThat((double) count).isCloseTo(expected, within(2.0));
        assertThat(again.takeEdges()).hasSize(count);
    }

    @Test
    void atItsNominalFlowTheMeterGivesThreeThousandPulsesAGallonAndLessBelow() {
        assertThat(pulsesPerGallon(2.5)).isCloseTo(3000, within(1e-6));
        assertThat(pulsesPerGallon(0.4) / pulsesPerGallon(4)).isCloseTo((1 - 0.01) / (1 - 0.001), within(1e-9));
    }

    @Test
    void belowItsStartFlowTheRotorStandsStill() {
        assertThat(METER.pulsesPerSecond(0.049 * GALLON_PER_MINUTE)).isZero();
        assertThat(METER.pulsesPerSecond(0.051 * GALLON_PER_MINUTE)).isPositive();
    }

    @ParameterizedTest(name = "{0} gal/min")
    @ValueSource(doubles = {0.3, 1, 4})
    void edgeJitterAloneGivesNeighbouringIntervalsTheCorrelationMinusAHalf(double gpm) {
        Intervals intervals = Intervals.between(edgesAt(gpm, withPattern(0), 0, 3000));

        // Each edge's deviation lengthens one interval and shortens the next: -1/2, and sqrt(2) of the jitter.
        assertThat(intervals.lagOneCorrelation()).isCloseTo(-0.5, within(0.05));
        assertThat(intervals.variation()).isCloseTo(Math.sqrt(2) * 0.01, within(0.0007));
    }

    @Test
    void theBladePatternRepeatsEveryTurnWithItsSize() {
        Intervals intervals = Intervals.between(edgesAt(2, METER, 0, 6000));

        assertThat(intervals.bladePattern(6)).isCloseTo(0.012, within(0.0008));
        assertThat(intervals.variation()).isBetween(0.015, 0.022);
    }

    @ParameterizedTest
    @EnumSource
    void airSlugsMakeNeighbouringIntervalsAlike(Severity severity) {
        Bench bench = Bench.of(PumpFault.SUCTION_AIR.applyTo(HEALTHY, severity));
        bench.hold(0.6, 8);
        bench.takeEdges();
        bench.hold(0.6, 60);

        Intervals intervals = Intervals.between(bench.takeEdges());

        assertThat(intervals.lagOneCorrelation()).isGreaterThan(0.5);
    }

    @Test
    void fifteenPercentOfAirMakesTheIntervalVaryByAboutTenPercent() {
        Bench bench = Bench.of(PumpFault.SUCTION_AIR.applyTo(HEALTHY, Severity.MODERATE));
        bench.hold(0.6, 8);
        bench.takeEdges();
        bench.hold(0.6, 60);

        assertThat(Intervals.between(bench.takeEdges()).variation()).isBetween(0.08, 0.12);
    }

    @Test
    void airSlugsDoNotChangeTheCountOnAverage() {
        PumpParameters airy = PumpFault.SUCTION_AIR.applyTo(HEALTHY, Severity.MODERATE);
        Bench bench = Bench.of(airy);
        bench.hold(0.6, 8);
        bench.takeEdges();
        bench.hold(0.6, 300);

        double flow = bench.gallonsPerMinute() * GALLON_PER_MINUTE;
        double relative = bench.takeEdges().length / (300 * METER.pulsesPerSecond(flow));

        // 10 % variation over some 30,000 pulses that are alike over about 16: standard error 0.3 %.
        assertThat(relative).isCloseTo(1, within(0.01));
    }

    @ParameterizedTest(name = "error {0}")
    @CsvSource({"0.01", "-0.02"})
    void anErrorOfKChangesTheCountByItsShare(double error) {
        double[] right = edgesAt(2, METER, 0, 20_000);
        double[] wrong = edgesAt(2, METER, error, 20_000);

        assertThat((double) wrong.length / right.length).isCloseTo(1 + error, within(1e-4));
    }

    private static double pulsesPerGallon(double gpm) {
        double flow = gpm * GALLON_PER_MINUTE;
        return METER.pulsesPerSecond(flow) / flow * GALLON_M3;
    }

    private static MeterParameters withPattern(double pattern) {
        return new MeterParameters(
                METER.pulsesPerM3AtInfiniteFlow(),
                METER.lagM3PerSecond(),
                METER.startM3PerSecond(),
                METER.blades(),
                pattern,
                METER.edgeJitterRelative(),
                METER.slugVolumeM3());
    }

    private static PulseMeter meter(MeterParameters parameters, double error, long seed) {
        AirSlugs none = new AirSlugs(0, parameters.slugVolumeM3(), new Random(seed));
        return new PulseMeter(parameters, error, none, Streams.stream(seed, 0));
    }

    /** Edges of a steady flow, over a time in which an exact meter gives the wanted number. */
    private static double[] edgesAt(double gpm, MeterParameters parameters, double error, int wanted) {
        double flow = gpm * GALLON_PER_MINUTE;
        double seconds = wanted / parameters.pulsesPerSecond(flow);
        PulseMeter meter = meter(parameters, error, 5);
        EdgeTimes edges = new EdgeTimes();
        int parts = (int) Math.ceil(seconds / 0.005);
        for (int i = 0; i < parts; i++) {
            meter.pass(flow, i * seconds / parts, seconds / parts, edges);
        }
        return edges.take();
    }
}
