package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.quantity.Uncertain;

class PulseFrequencyTest {

    @Property(seed = "20260101", tries = 200)
    void anEvenTrainHasItsOwnFrequency(@ForAll @DoubleRange(min = 1, max = 2000) double hertz) {
        PulseTrain train = PulseTrains.sampled(PulseTrains.even(hertz, (int) (hertz * 6), i -> 0), 0.02, 5);
        Uncertain found = PulseFrequency.hertz(train, 5);
        assertThat(found.value()).isCloseTo(hertz, within(hertz * 1e-6));
        assertThat(found.standardUncertainty()).isLessThan(hertz * 1e-6);
    }

    /**
     * White edge jitter of 1 s: the slope of n edges has variance 12/(n(n^2-1)), the Cramer-Rao bound (the least-squares
     * slope of any textbook; for counters see "The Omega counter", arXiv:1506.05009). Checked by 4000 seeded trains, where
     * a sample variance is good to 2.2 %.
     */
    @ParameterizedTest
    @CsvSource({"20, 0.0015037593985", "50, 9.60384153661e-05", "200, 1.50003750094e-06"})
    void whiteJitterGivesTheCramerRaoVariance(int edges, double varianceForUnitJitter) {
        double jitter = 1e-3;
        double period = 0.1;
        Random random = new Random(edges);
        int runs = 4000;
        double[] periods = new double[runs];
        double[] claims = new double[runs];
        for (int run = 0; run < runs; run++) {
            double[] seconds = PulseTrains.even(1 / period, edges, i -> jitter * random.nextGaussian());
            Uncertain found = PulseFrequency.hertz(PulseTrains.whole(seconds), edges * period);
            periods[run] = 1 / found.value();
            double u = found.relative() * period;
            claims[run] = u * u;
        }
        // The median: one white train in twenty is taken for a slow one and states far more.
        Arrays.sort(claims);
        double claimed = claims[runs / 2];
        double expected = varianceForUnitJitter * jitter * jitter;
        double seen = Math.pow(Statistics.deviation(periods), 2);
        assertThat(seen / expected).isBetween(0.93, 1.07);
        assertThat(claimed / expected).isBetween(0.93, 1.15);
    }

    @Test
    void regressionKnowsFarMoreThanTheCountOverTheGate() {
        Random random = new Random(3);
        double[] seconds = PulseTrains.even(24.13, 200, i -> 0.0004 * random.nextGaussian());
        Uncertain found = PulseFrequency.hertz(PulseTrains.sampled(seconds, 0.02, 5), 5);
        double gate = 1 / Math.sqrt(6) / 5;
        assertThat(found.value()).isCloseTo(24.13, within(0.003));
        assertThat(found.standardUncertainty()).isLessThan(gate / 50);
        assertThat(found.degreesOfFreedom()).isBetween(100.0, 130.0);
    }

    @Test
    void lostSamplesCostPrecisionOnly() {
        double[] seconds = PulseTrains.even(200, 1200, i -> 0);
        Uncertain found = PulseFrequency.hertz(PulseTrains.sampled(seconds, 0.5, 5), 5);
        assertThat(found.value()).isCloseTo(200, within(1e-4));
    }

    /** A wandering flow: neighbouring residuals are alike, and the plain regression would claim far too little. */
    @Test
    void theUncertaintyOfAWanderingTrainIsHonest() {
        Random random = new Random(17);
        int runs = 300;
        double[] found = new double[runs];
        double claimed = 0;
        for (int run = 0; run < runs; run++) {
            Uncertain hertz = PulseFrequency.hertz(PulseTrains.whole(wandering(random)), 5);
            found[run] = hertz.value();
            claimed += hertz.standardUncertainty() / runs;
        }
        assertThat(claimed / Statistics.deviation(found)).isBetween(0.8, 1.3);
    }

    private static double[] wandering(Random random) {
        double[] seconds = new double[500];
        double time = 0;
        double speed = 0;
        for (int i = 0; i < seconds.length; i++) {
            speed = 0.9 * speed + 0.02 * random.nextGaussian();
            time += 0.01 * (1 + speed);
            seconds[i] = time;
        }
        return seconds;
    }

    @Test
    void noPulseIsNoFlowWithTheDoubtOfOnePulse() {
        PulseTrain train = PulseTrains.sampled(new double[0], 0.02, 5);
        Uncertain found = PulseFrequency.hertz(train, 5);
        assertThat(found.value()).isZero();
        assertThat(found.standardUncertainty()).isCloseTo(0.2 / Math.sqrt(3), within(1e-12));
    }

    /** Standard uncertainty of a count over a free gate: 1/sqrt(6), two rectangular ends (JCGM 100, 4.3.9). */
    @Test
    void oneOrTwoPulsesAreCountedOverTheWindow() {
        PulseTrain train = PulseTrains.sampled(new double[] {1.2, 3.4}, 0.02, 5);
        Uncertain found = PulseFrequency.hertz(train, 5);
        assertThat(found.value()).isEqualTo(0.4);
        assertThat(found.standardUncertainty()).isCloseTo(1 / Math.sqrt(6) / 5, within(1e-12));
    }

    @Test
    void anEdgeOlderThanTheWindowIsLeftOut() {
        long[] edges = {7, 8, 9, 10, 11};
        long[] last = {100, 5_000_000_000L, 6_000_000_000L, 7_000_000_000L, 8_000_000_000L};
        assertThat(PulseFrequency.hertz(PulseTrain.of(edges, last), 4).value()).isCloseTo(1, within(1e-9));
    }

    @Test
    void countsThatFallAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PulseTrain.of(new long[] {5, 3}, new long[] {10, 20}))
                .withMessage("edge 3 at 20 ns follows edge 5 at 10 ns: both must grow");
    }

    @Test
    void aWindowWithoutLengthIsRefused() {
        PulseTrain train = PulseTrains.whole(new double[] {1, 2, 3});
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PulseFrequency.hertz(train, 0))
                .withMessageStartingWith("window is 0.0 s");
    }
}
