package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.Uncertain;

class StatisticsTest {

    /** NIST Standard Reference Database 140, univariate set NumAcc1: certified mean, deviation and autocorrelation. */
    @Test
    void certifiedFiguresOfNumAcc1() {
        double[] values = {10_000_001, 10_000_003, 10_000_002};
        assertThat(Statistics.mean(values)).isEqualTo(10_000_002);
        assertThat(Statistics.deviation(values)).isEqualTo(1);
        assertThat(Statistics.lagOne(values)).isEqualTo(-0.5);
    }

    /** NIST Standard Reference Database 140, univariate set NumAcc4: 10000000.2 and then 0.1 below and above in turn. */
    @Test
    void certifiedFiguresOfNumAcc4() {
        double[] values = new double[1001];
        values[0] = 10_000_000.2;
        for (int i = 1; i < values.length; i++) {
            values[i] = i % 2 == 1 ? 10_000_000.1 : 10_000_000.3;
        }
        assertThat(Statistics.mean(values)).isCloseTo(10_000_000.2, within(1e-7));
        assertThat(Statistics.deviation(values)).isCloseTo(0.1, within(1e-8));
        assertThat(Statistics.lagOne(values)).isCloseTo(-0.999, within(1e-7));
    }

    @Test
    void independentReadingsAreWorthTheirNumber() {
        double[] values = new Random(5).doubles(400).toArray();
        assertThat(Statistics.independent(values)).isEqualTo(400);
    }

    /** An autoregressive series with correlation 0.8: the mean scatters as (1 + 0.8)/(1 - 0.8) = 9 times fewer would. */
    @Test
    void theUncertaintyOfAMeanOfWanderingReadingsIsHonest() {
        Random random = new Random(11);
        int runs = 400;
        double[] means = new double[runs];
        double claimed = 0;
        for (int run = 0; run < runs; run++) {
            Uncertain mean = Statistics.uncertainMean(wandering(random, 500, 0.8));
            means[run] = mean.value();
            claimed += mean.standardUncertainty() / runs;
        }
        assertThat(claimed / Statistics.deviation(means)).isBetween(0.85, 1.15);
    }

    private static double[] wandering(Random random, int length, double kept) {
        double[] values = new double[length];
        double state = random.nextGaussian();
        for (int i = 0; i < length; i++) {
            state = kept * state + Math.sqrt(1 - kept * kept) * random.nextGaussian();
            values[i] = state;
        }
        return values;
    }

    @Test
    void aSingleReadingHasNoScatter() {
        Uncertain mean = Statistics.uncertainMean(new double[] {4.2});
        assertThat(mean).isEqualTo(new Uncertain(4.2, 0, 1));
    }

    @Test
    void aMeanOfNothingIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Statistics.mean(new double[0]))
                .withMessage("a mean needs at least 1 reading, there is none");
    }

    @Test
    void readingsThatDoNotVaryAreNotCorrelated() {
        assertThat(Statistics.lagOne(new double[] {3, 3, 3})).isZero();
    }
}
