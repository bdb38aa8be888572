package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.quantity.Uncertain;

class EdgePatternTest {
    private static final double[] PLACE = {0.012, -0.02, 0.006, 0.022, -0.009, -0.011};

    @ParameterizedTest
    @ValueSource(ints = {13, 20, 33, 50, 100})
    void aKnownBladePatternBiasesNothing(int edges) {
        double[] seconds = PulseTrains.even(100, edges, i -> 0.01 * PLACE[(int) i % 6]);
        PulseTrain train = PulseTrains.whole(seconds);
        if (edges >= 18) {
            assertThat(PulseFrequency.hertz(train, 1, 6).value()).isCloseTo(100, within(1e-4));
        } else {
            Uncertain short2 = PulseFrequency.hertz(train, 1, 6);
            assertThat(Math.abs(short2.value() - 100)).isLessThan(3 * short2.standardUncertainty());
        }
    }

    @Property(seed = "20260202", tries = 60)
    void thePatternIsFoundWithItsSize(@ForAll @IntRange(min = 3, max = 9) int blades) {
        Random random = new Random(blades);
        double[] place = random.doubles(blades, -0.03, 0.03).toArray();
        double mean = Arrays.stream(place).average().orElseThrow();
        double size = Math.sqrt(
                Arrays.stream(place).map(p -> (p - mean) * (p - mean)).average().orElseThrow());
        double[] numbers = IntStream.range(0, 900).asDoubleStream().toArray();
        double[] values = Arrays.stream(numbers)
                .map(i -> place[(int) i % blades] + 0.01 * random.nextGaussian())
                .toArray();
        BladePattern found = BladePattern.detect(numbers, values);
        assertThat(found.blades()).isEqualTo(blades);
        assertThat(found.deviation()).isCloseTo(size, within(0.002));
    }

    @Test
    void scatterHasNoPattern() {
        Random random = new Random(4);
        double[] numbers = IntStream.range(0, 200).asDoubleStream().toArray();
        int found = 0;
        for (int i = 0; i < 500; i++) {
            double[] values = random.doubles(200).map(d -> d - 0.5).toArray();
            found += BladePattern.detect(numbers, values).blades() > 1 ? 1 : 0;
        }
        assertThat(found).isLessThanOrEqualTo(3);
    }

    /** A later start changes nothing; a clock that runs k times as fast divides frequency and uncertainty by k. */
    @Property(seed = "20260203", tries = 100)
    void frequencyIsFreeOfStartAndScalesWithTheClock(
            @ForAll @DoubleRange(min = 1, max = 900) double shift,
            @ForAll @DoubleRange(min = 0.5, max = 8) double clock) {
        Random random = new Random(7);
        double[] seconds = PulseTrains.even(80, 400, i -> 0.0001 * random.nextGaussian() + 0.01 * PLACE[(int) i % 6]);
        Uncertain here = PulseFrequency.hertz(PulseTrains.whole(seconds), 5);
        double[] later = Arrays.stream(seconds).map(t -> t + shift).toArray();
        double[] slower = Arrays.stream(seconds).map(t -> t * clock).toArray();
        Uncertain shifted = PulseFrequency.hertz(PulseTrains.whole(later), 5);
        Uncertain scaled = PulseFrequency.hertz(PulseTrains.whole(slower), 5 * clock);
        assertThat(shifted.value()).isCloseTo(here.value(), within(1e-6));
        assertThat(shifted.standardUncertainty()).isCloseTo(here.standardUncertainty(), within(1e-6));
        assertThat(scaled.value() * clock).isCloseTo(here.value(), within(1e-6));
        assertThat(scaled.standardUncertainty() * clock).isCloseTo(here.standardUncertainty(), within(1e-6));
    }

    /** The stated 95 % interval holds the truth about 95 times in 100, whatever the flow does beside white jitter. */
    @ParameterizedTest
    @CsvSource({"white, 12", "white, 60", "white, 400", "walk, 60", "walk, 400", "air, 800", "surge, 2000"})
    void theStatedIntervalHoldsTheTruth(String noise, int edges) {
        Random random = new Random(edges);
        int runs = 800;
        int held = 0;
        for (int run = 0; run < runs; run++) {
            Uncertain found = PulseFrequency.hertz(PulseTrains.whole(train(noise, edges, random)), edges / 100.0);
            double t = new TDistribution(found.degreesOfFreedom()).inverseCumulativeProbability(0.975);
            held += Math.abs(found.value() - 100) < t * found.standardUncertainty() ? 1 : 0;
        }
        assertThat(held / (double) runs)
                .as("%s, %d edges".formatted(noise, edges))
                .isBetween(0.92, 0.99);
    }

    private static double[] train(String noise, int edges, Random random) {
        double[] seconds = new double[edges];
        double time = 1;
        double slow = 0;
        double phase = random.nextDouble() * 2 * Math.PI;
        double cycle = 0.6 + 2 * random.nextDouble();
        for (int i = 0; i < edges; i++) {
            slow = 0.88 * slow + Math.sqrt(1 - 0.88 * 0.88) * random.nextGaussian();
            double wander = switch (noise) {
                case "walk" -> 0.05 * random.nextGaussian();
                case "air" -> 0.1 * slow;
                case "surge" -> 0.08 * Math.sin(phase + 2 * Math.PI * cycle * i / 100);
                default -> 0;
            };
            time += 0.01 * (1 + wander);
            seconds[i] = time + 1e-4 * random.nextGaussian();
        }
        return seconds;
    }

    @Test
    void aRotorWithoutBladesIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PulseFrequency.hertz(PulseTrains.whole(new double[] {1, 2, 3}), 5, 0))
                .withMessageStartingWith("blade count is 0.0");
    }
}
