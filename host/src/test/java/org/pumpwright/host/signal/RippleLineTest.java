package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.Uncertain;

class RippleLineTest {
    private static final double RATE = 2000;
    private static final Uncertain REVOLUTION = Uncertain.of(7.3, 0.01);

    private static double[] current(double once, double thrice, double noise, Random random) {
        double[] samples = new double[4000];
        double phase = random.nextDouble() * 7;
        for (int i = 0; i < samples.length; i++) {
            double turn = 2 * Math.PI * 7.3 * i / RATE;
            samples[i] =
                    4 + once * Math.sin(turn + phase) + thrice * Math.cos(3 * turn) + noise * random.nextGaussian();
        }
        return samples;
    }

    @Test
    void bothLinesHaveTheirAmplitude() {
        List<RippleLine> lines = RippleLine.ofRevolution(current(0.5, 0.12, 0.2, new Random(1)), RATE, REVOLUTION, 3);
        assertThat(lines.get(0).hertz()).isEqualTo(7.3);
        assertThat(lines.get(1).hertz()).isCloseTo(21.9, within(1e-9));
        assertThat(lines.get(0).amplitude().value()).isCloseTo(0.5, within(0.02));
        assertThat(lines.get(1).amplitude().value()).isCloseTo(0.12, within(0.02));
        assertThat(lines).allMatch(RippleLine::clear);
    }

    /** White noise s: each part of the amplitude has s sqrt(2 sum w^2)/sum w = s sqrt(3/N) under a Hann window. */
    @Test
    void theStatedUncertaintyIsThatOfManyRecordings() {
        Random random = new Random(2);
        double[] found = new double[400];
        double claimed = 0;
        for (int i = 0; i < found.length; i++) {
            RippleLine line = RippleLine.of(current(0.5, 0, 0.4, random), RATE, Uncertain.of(7.3, 0));
            found[i] = line.amplitude().value();
            claimed += Math.pow(line.amplitude().standardUncertainty(), 2) / found.length;
        }
        double expected = 0.4 * Math.sqrt(3 / 4000.0);
        assertThat(Statistics.deviation(found) / expected).isBetween(0.9, 1.1);
        assertThat(Math.sqrt(claimed) / expected).isBetween(0.9, 1.15);
        assertThat(Statistics.mean(found)).isCloseTo(0.5, within(0.003));
    }

    @Test
    void noiseAloneIsNotClear() {
        Random random = new Random(3);
        int clear = 0;
        for (int i = 0; i < 200; i++) {
            clear += RippleLine.of(current(0, 0, 0.4, random), RATE, REVOLUTION).clear() ? 1 : 0;
        }
        assertThat(clear).isLessThan(20);
    }

    @Test
    void anUncertainRevolutionMakesAnUncertainAmplitude() {
        double[] samples = current(0.5, 0, 0, new Random(4));
        RippleLine exact = RippleLine.of(samples, RATE, Uncertain.of(7.3, 0));
        RippleLine rough = RippleLine.of(samples, RATE, Uncertain.of(7.5, 0.25));
        assertThat(exact.amplitude().value()).isCloseTo(0.5, within(0.001));
        assertThat(rough.amplitude().value()).isLessThan(0.47);
        assertThat(0.5 - rough.amplitude().value())
                .isLessThan(2 * rough.amplitude().standardUncertainty());
    }

    @Test
    void aLineTooCloseToZeroIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RippleLine.of(new double[4000], RATE, Uncertain.of(1, 0)))
                .withMessage("line frequency is 1.0 Hz, allowed are 1.5 to 900.0 Hz");
    }
}
