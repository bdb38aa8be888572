package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class RampThresholdTest {
    private static final double SAMPLE = 0.02;
    private static final double RATE = 0.01;

    /** A ramp of 1 %/s from 5 % whose flow jumps to a frequency at 15.5 %, with stray pulses before if wanted. */
    private record Ramp(double[] seconds, double[] duty, long[] edges, double[] last) {
        static Ramp of(double phaseAtStart, double strayAt, DoubleUnaryOperator duty, DoubleUnaryOperator hertz) {
            int n = 1200;
            Ramp ramp = new Ramp(new double[n], new double[n], new long[n], new double[n]);
            double phase = phaseAtStart;
            boolean strayed = false;
            for (int i = 1; i < n; i++) {
                ramp.seconds[i] = i * SAMPLE;
                ramp.duty[i] = duty.applyAsDouble(ramp.seconds[i]);
                ramp.duty[0] = duty.applyAsDouble(0);
                ramp.edges[i] = ramp.edges[i - 1];
                ramp.last[i] = ramp.last[i - 1];
                double before = phase;
                phase += hertz.applyAsDouble(ramp.duty[i]) * SAMPLE;
                if (!strayed && strayAt > 0 && ramp.seconds[i] >= strayAt) {
                    strayed = true;
                    ramp.edges[i]++;
                    ramp.last[i] = ramp.seconds[i];
                } else if (Math.floor(phase) > Math.floor(before)) {
                    ramp.edges[i] += (long) (Math.floor(phase) - Math.floor(before));
                    ramp.last[i] = ramp.seconds[i] - (phase - Math.floor(phase)) / (phase - before) * SAMPLE;
                }
            }
            return ramp;
        }

        RampThreshold start() {
            return RampThreshold.start(seconds, duty, edges, last).orElseThrow();
        }

        RampThreshold stop() {
            return RampThreshold.stop(seconds, duty, edges, last).orElseThrow();
        }
    }

    private static double up(double seconds) {
        return 0.05 + RATE * seconds;
    }

    private static double down(double seconds) {
        return 0.27 - RATE * seconds;
    }

    @Test
    void theStartIsFoundWithinWhatOnePulseResolves() {
        Random random = new Random(1);
        double squares = 0;
        for (int i = 0; i < 200; i++) {
            RampThreshold found = Ramp.of(random.nextDouble(), 0, RampThresholdTest::up, d -> d > 0.155 ? 6 : 0)
                    .start();
            assertThat(found.latencySeconds()).isCloseTo(1 / 6.0, within(1e-6));
            squares += Math.pow((found.duty().value() - 0.155) / found.duty().standardUncertainty(), 2) / 200;
        }
        assertThat(Math.sqrt(squares)).isBetween(0.8, 1.25);
    }

    @Test
    void theStopIsFoundOnTheWayDown() {
        Random random = new Random(2);
        double squares = 0;
        for (int i = 0; i < 200; i++) {
            RampThreshold found = Ramp.of(random.nextDouble(), 0, RampThresholdTest::down, d -> d > 0.12 ? 4 : 0)
                    .stop();
            squares += Math.pow((found.duty().value() - 0.12) / found.duty().standardUncertainty(), 2) / 200;
        }
        assertThat(Math.sqrt(squares)).isBetween(0.8, 1.25);
    }

    @Test
    void aStrayPulseBeforeIsNoStart() {
        RampThreshold found =
                Ramp.of(0.4, 3, RampThresholdTest::up, d -> d > 0.155 ? 6 : 0).start();
        assertThat(found.duty().value()).isCloseTo(0.155, within(0.002));
        assertThat(found.seconds()).isCloseTo(10.5, within(0.2));
    }

    @Test
    void manyPulsesASampleAreSpreadOverIt() {
        RampThreshold found =
                Ramp.of(0, 0, RampThresholdTest::up, d -> d > 0.155 ? 300 : 0).start();
        assertThat(found.duty().value()).isCloseTo(0.155, within(0.0003));
    }

    @Test
    void noFlowHasNoThreshold() {
        Ramp ramp = Ramp.of(0, 2, RampThresholdTest::up, d -> 0);
        assertThat(RampThreshold.start(ramp.seconds(), ramp.duty(), ramp.edges(), ramp.last()))
                .isEmpty();
        assertThat(RampThreshold.stop(ramp.seconds(), ramp.duty(), ramp.edges(), ramp.last()))
                .isEmpty();
    }

    @Test
    void aRampOfOneSampleIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RampThreshold.start(new double[1], new double[1], new long[1], new double[1]))
                .withMessage("1 times, 1 counts and 1 edge times: they must be as many, at least 2");
    }
}
