package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.signal.Surge.Shape;

class SurgeTest {
    private static final double SAMPLE = 0.02;

    private static double[] series(double seconds, DoubleUnaryOperator at) {
        double[] values = new double[(int) Math.round(seconds / SAMPLE)];
        for (int i = 0; i < values.length; i++) {
            values[i] = at.applyAsDouble(i * SAMPLE);
        }
        return values;
    }

    private static double square(double t, double hertz, double duty) {
        double turn = t * hertz;
        return turn - Math.floor(turn) < duty ? 1 : -1;
    }

    @ParameterizedTest
    @CsvSource({"0.4", "1.0", "2.37", "4.1"})
    void aWaveHasItsSizeAndFrequency(double hertz) {
        Random random = new Random(1);
        Surge surge = Surge.of(
                series(10, t -> 200 * (1 + 0.04 * Math.sin(2 * Math.PI * hertz * t)) + 0.3 * random.nextGaussian()),
                SAMPLE);
        assertThat(surge.peakToPeakShare().value()).isCloseTo(0.08, within(0.012));
        assertThat(surge.hertz().value())
                .isCloseTo(hertz, within(4 * surge.hertz().standardUncertainty()));
        assertThat(surge.hertz().standardUncertainty()).isLessThan(0.01);
        assertThat(surge.shape()).isEqualTo(Shape.WAVE);
    }

    @ParameterizedTest
    @CsvSource({"0.35, 0.5", "1.0, 0.5", "1.3, 0.3", "2.8, 0.5"})
    void aDemandSwitchMakesASquareWave(double hertz, double duty) {
        Random random = new Random(2);
        Surge surge = Surge.of(
                series(12, t -> 45 * (1 + 0.1 * square(t + 0.13, hertz, duty)) + 0.3 * random.nextGaussian()), SAMPLE);
        assertThat(surge.shape()).isEqualTo(Shape.SQUARE_WAVE);
        assertThat(surge.hertz().value()).isCloseTo(hertz, within(0.05 * hertz));
    }

    @Test
    void aSquareWaveSlowerThanAnySwitchIsAWave() {
        Surge surge = Surge.of(series(40, t -> 45 * (1 + 0.1 * square(t, 0.15, 0.5))), SAMPLE);
        assertThat(surge.shape()).isEqualTo(Shape.WAVE);
    }

    @Test
    void scatterIsNoSurge() {
        Random random = new Random(3);
        for (int i = 0; i < 50; i++) {
            Surge surge = Surge.of(series(10, t -> 100 + random.nextGaussian()), SAMPLE);
            assertThat(surge.shape()).isEqualTo(Shape.NONE);
            assertThat(surge.peakToPeakShare().value() / surge.noiseShare()).isBetween(0.5, 1.3);
        }
    }

    @Test
    void aSlowTrendAndFastRippleAreNoSurge() {
        Random random = new Random(4);
        Surge surge = Surge.of(
                series(10, t -> 100 + 0.5 * t + 3 * Math.sin(2 * Math.PI * 17 * t) + 0.2 * random.nextGaussian()),
                SAMPLE);
        assertThat(surge.peakToPeakShare().value()).isLessThan(0.02);
        assertThat(surge.shape()).isEqualTo(Shape.NONE);
    }

    @Property(seed = "20260205", tries = 40)
    void theShareIsFreeOfTheUnit(@ForAll @DoubleRange(min = 0.01, max = 5000) double unit) {
        DoubleUnaryOperator wave = t -> 3 + 0.2 * Math.sin(7 * t) + 0.05 * Math.cos(55 * t);
        Surge here = Surge.of(series(6, wave), SAMPLE);
        Surge there = Surge.of(series(6, t -> unit * wave.applyAsDouble(t)), SAMPLE);
        assertThat(there.peakToPeakShare().value())
                .isCloseTo(here.peakToPeakShare().value(), within(1e-9));
        assertThat(there.hertz().value()).isCloseTo(here.hertz().value(), within(1e-6));
        assertThat(there.shape()).isEqualTo(here.shape());
    }

    @Test
    void aConstantReadingDoesNotSwing() {
        Surge surge = Surge.of(series(5, t -> 12), SAMPLE);
        assertThat(surge.shape()).isEqualTo(Shape.NONE);
        assertThat(surge.peakToPeakShare().value()).isZero();
    }

    @Test
    void aSlowSeriesIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Surge.of(new double[] {1, 2, 3}, 0.5))
                .withMessage("time between samples is 0.5 s, allowed are 1.0E-6 to 0.1 s");
    }
}
