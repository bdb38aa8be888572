package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettleDetectorTest {
    private static final double SHARE = 0.005;
    private static final double TAU_SECONDS = 0.5;

    /** A meter behind a flow that rises first-order from a share of its end value, with jitter and a blade pattern. */
    private static final class RisingMeter {
        private static final double[] PLACE = {0, 0.006, -0.004, 0.008, -0.007, 0.003};
        private final Random random;
        private final double hertz;
        private final double fromShare;
        private final double tau;
        private double phase;
        private double nextEdge = 0.3;
        private long edges;
        private long lastEdgeNanos;
        private long nanos;

        RisingMeter(double hertz, double fromShare, double tau, long seed) {
            this.hertz = hertz;
            this.fromShare = fromShare;
            this.tau = tau;
            random = new Random(seed);
        }

        double remainingShare() {
            return (1 - fromShare) * Math.exp(-nanos / 1e9 / tau);
        }

        /** Advances 1 ms at a time, so that an edge is placed within the millisecond it falls in. */
        void addTo(SettleDetector detector, double periodSeconds) {
            for (int i = 0; i < Math.round(periodSeconds * 1000); i++) {
                double rate = hertz * (1 - remainingShare());
                double before = phase;
                phase += rate * 0.001;
                while (phase >= nextEdge) {
                    edges++;
                    lastEdgeNanos = nanos + Math.round(1e6 * (nextEdge - before) / (phase - before));
                    int blade = (int) (edges % PLACE.length);
                    nextEdge = edges + 1.3 + PLACE[blade] + 0.01 * random.nextGaussian();
                }
                nanos += 1_000_000;
            }
            detector.addEdges(nanos, edges, lastEdgeNanos);
        }

        double seconds() {
            return nanos / 1e9;
        }
    }

    @ParameterizedTest
    @CsvSource({"24, 0", "24, 0.6", "70, 0", "250, 0", "250, 0.7"})
    void isNeverFooledByAFlowThatStillRisesByMoreThanOnePercent(double hertz, double fromShare) {
        for (long seed = 0; seed < 200; seed++) {
            RisingMeter meter = new RisingMeter(hertz, fromShare, TAU_SECONDS, seed);
            SettleDetector detector = new SettleDetector(SHARE);
            while (meter.remainingShare() > 0.01) {
                meter.addTo(detector, 0.02);
                assertThat(detector.settled() && meter.remainingShare() > 0.01)
                        .as("seed %d at %.2f s", seed, meter.seconds())
                        .isFalse();
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"24", "70", "250"})
    void findsASteadyFlowSettledWithinSixSeconds(double hertz) {
        for (long seed = 0; seed < 200; seed++) {
            RisingMeter meter = new RisingMeter(hertz, 0.5, TAU_SECONDS, seed);
            SettleDetector detector = new SettleDetector(SHARE);
            while (!detector.settled()) {
                meter.addTo(detector, 0.02);
                assertThat(meter.seconds()).as("seed %d", seed).isLessThan(6);
            }
        }
    }

    @Test
    void aSlowDriftOfTwoPercentAWindowIsNotSettled() {
        SettleDetector detector = new SettleDetector(SHARE);
        for (int i = 0; i <= 200; i++) {
            detector.addValue(i * 20_000_000L, 100 * (1 + 0.01 * i * 0.02));
            assertThat(detector.settled()).isFalse();
        }
    }

    @Test
    void aDriftBelowTheShareIsSettled() {
        SettleDetector detector = new SettleDetector(SHARE);
        for (int i = 0; i <= 105; i++) {
            detector.addValue(i * 20_000_000L, 100 * (1 + 0.002 * i * 0.02));
        }
        assertThat(detector.settled()).isTrue();
    }

    @Test
    void noFlowAtAllIsSettledAfterAWholeWindow() {
        SettleDetector detector = new SettleDetector(SHARE);
        for (int i = 0; i < 100; i++) {
            detector.addEdges(i * 20_000_000L, 0, 0);
            assertThat(detector.settled()).isFalse();
        }
        for (int i = 100; i < 110; i++) {
            detector.addEdges(i * 20_000_000L, 0, 0);
        }
        assertThat(detector.settled()).isTrue();
    }

    /** A pump that breaks away late: seven means of nothing and then a flow. */
    @Test
    void aStepAtTheVeryEndIsNotSettled() {
        SettleDetector detector = new SettleDetector(SHARE);
        for (int i = 0; i <= 150; i++) {
            detector.addValue(i * 20_000_000L, i < 94 ? 0 : 50);
            double seconds = i * 0.02;
            boolean stepInWindow = seconds > 1.9 && seconds < 3.5;
            assertThat(stepInWindow && detector.settled())
                    .as("at %.2f s", seconds)
                    .isFalse();
        }
    }

    @Test
    void scatterWithoutTrendIsSettledThoughLargerThanTheShare() {
        Random random = new Random(2);
        SettleDetector detector = new SettleDetector(SHARE);
        int settled = 0;
        for (int i = 0; i < 5000; i++) {
            detector.addValue(i * 20_000_000L, 10 + random.nextGaussian());
            settled += detector.settled() ? 1 : 0;
        }
        assertThat(settled).isGreaterThan(3500);
    }

    @Test
    void sameInputGivesTheSameAnswer() {
        RisingMeter one = new RisingMeter(24, 0, TAU_SECONDS, 9);
        RisingMeter two = new RisingMeter(24, 0, TAU_SECONDS, 9);
        SettleDetector first = new SettleDetector(SHARE);
        SettleDetector second = new SettleDetector(SHARE);
        for (int i = 0; i < 400; i++) {
            one.addTo(first, 0.02);
            two.addTo(second, 0.02);
            assertThat(first.settled()).isEqualTo(second.settled());
        }
    }

    @Test
    void aShareOfNothingIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SettleDetector(0))
                .withMessageStartingWith("share of change is 0.0");
    }

    /** At 5 pulses a second 2 s would hold ten; the window grows until it holds 24. */
    @Test
    void aSlowMeterIsWatchedUntilItHasGivenTwentyPulses() {
        SettleDetector detector = new SettleDetector(SHARE);
        double settledAt = 0;
        for (int i = 0; i <= 500 && settledAt == 0; i++) {
            long edges = (long) Math.floor(i * 0.02 * 5 + 0.3);
            detector.addEdges(i * 20_000_000L, edges, Math.round((edges - 0.3) / 5 * 1e9));
            settledAt = detector.settled() ? i * 0.02 : 0;
        }
        assertThat(settledAt).isBetween(4.0, 6.0);
    }

    @Test
    void aFlowThatStopsHasSettledAtNothingAfterAWindow() {
        SettleDetector detector = new SettleDetector(SHARE);
        double settledAt = 0;
        for (int i = 0; i <= 400; i++) {
            long edges = Math.min(i * 2, 200);
            detector.addEdges(i * 20_000_000L, edges, edges * 10_000_000L);
            settledAt = detector.settled() && settledAt == 0 && i > 130 ? i * 0.02 : settledAt;
        }
        assertThat(settledAt).isBetween(3.9, 4.2);
    }

    /** The crest of an overshoot has no slope, but its means follow each other and lie far apart. */
    @Test
    void theCrestOfAnOvershootIsNotSettled() {
        SettleDetector detector = new SettleDetector(SHARE);
        for (int i = 0; i <= 200; i++) {
            double seconds = i * 0.02;
            detector.addValue(i * 20_000_000L, 100 * (1 - 0.05 * (seconds - 2) * (seconds - 2)));
            assertThat(detector.settled()).as("at %.2f s", seconds).isFalse();
        }
    }
}
