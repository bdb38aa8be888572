package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.quantity.Uncertain;

class CountedFrequencyTest {

    /** 200 pulses over a free gate are good to 0.20 %, 1/(sqrt(6) N) (JCGM 100, 4.3.9, two rectangular ends). */
    @ParameterizedTest
    @CsvSource({"50, 0.0082", "100, 0.0041", "200, 0.0020", "500, 0.0008", "1000, 0.0004"})
    void aGateKnowsTheCountToOneOverSqrtSix(long pulses, double relative) {
        assertThat(CountedFrequency.overGate(pulses, 5).relative()).isCloseTo(relative, within(0.00005));
    }

    @Test
    void aFreeGateScattersAsStated() {
        Random random = new Random(8);
        double[] found = new double[20_000];
        for (int i = 0; i < found.length; i++) {
            double pulses = 40 + random.nextDouble();
            long counted = (long) Math.floor(pulses + random.nextDouble());
            found[i] = CountedFrequency.overGate(counted, pulses).value() - 1;
        }
        assertThat(Statistics.deviation(found) * 40.5 * Math.sqrt(6)).isCloseTo(1, within(0.03));
    }

    /**
     * Slope of n time stamps with unit white jitter: 12/(n(n^2-1)) by regression, 2/(n-1)^2 by the two ends (closed forms;
     * "The Omega counter", arXiv:1506.05009, has the large-n ratio n/6).
     */
    @ParameterizedTest
    @CsvSource({
        "3, 0.5, 0.5",
        "5, 0.1, 0.125",
        "10, 0.0121212121212, 0.0246913580247",
        "32, 0.000366568914956, 0.00208116545265",
        "100, 1.200120012e-05, 0.000204060810121",
        "1000, 1.2000012e-08, 2.00400600801e-06",
        "10000, 1.200000012e-11, 2.00040006001e-08"
    })
    void regressionAndTwoEndsHaveTheVariancesOfTheFormulas(int edges, double regression, double ends) {
        double[] numbers = IntStream.range(0, edges).asDoubleStream().toArray();
        double slope = EdgeLine.of(numbers, numbers, 1).slopeUncertainty(1);
        assertThat(slope * slope / regression).isCloseTo(1, within(1e-9));
        PulseTrain train = PulseTrains.whole(PulseTrains.even(1, edges, i -> 0));
        double reciprocal = CountedFrequency.reciprocal(train, 1).standardUncertainty();
        assertThat(reciprocal * reciprocal / ends).isCloseTo(1, within(1e-8));
    }

    @Test
    void reciprocalCountingKnowsNoGate() {
        PulseTrain train = PulseTrains.sampled(PulseTrains.even(24.13, 200, i -> 0), 0.02, 5);
        Uncertain found = CountedFrequency.reciprocal(train, 0.0004);
        assertThat(found.value()).isCloseTo(24.13, within(1e-6));
        assertThat(found.relative()).isCloseTo(Math.sqrt(2) * 0.0004 * 24.13 / 119, within(1e-7));
    }

    @Test
    void oneEdgeHasNoInterval() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CountedFrequency.reciprocal(PulseTrains.whole(new double[] {1}), 0))
                .withMessageStartingWith("edges of known time is 1.0");
    }
}
