package org.pumpwright.host.claim.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Tails against sums worked out term by term. */
final class UpperTailTest {
    @Test
    void sevenOrMoreWhereTwoPointFourAreExpectedComeByChanceOnceInNinety() {
        double below = 0;
        double term = Math.exp(-2.4);
        for (int k = 0; k < 7; k++) {
            below += term;
            term *= 2.4 / (k + 1);
        }

        assertThat(UpperTail.poisson(2.4, 7)).isCloseTo(1 - below, within(1e-13));
        assertThat(UpperTail.poisson(2.4, 7)).isCloseTo(0.0116, within(0.00005));
    }

    @Test
    void sevenOrMoreOfOneHundredAndTwentyAtTwoPercentAreALittleRarer() {
        double below = 0;
        double term = Math.pow(0.98, 120);
        for (int k = 0; k < 7; k++) {
            below += term;
            term *= (120.0 - k) / (k + 1) * 0.02 / 0.98;
        }

        assertThat(UpperTail.binomial(120, 0.02, 7)).isCloseTo(1 - below, within(1e-13));
        assertThat(UpperTail.binomial(120, 0.02, 7)).isBetween(0.010, UpperTail.poisson(2.4, 7));
    }

    @Test
    void noneOrMoreIsCertain() {
        assertThat(UpperTail.poisson(0.5, 0)).isEqualTo(1);
        assertThat(UpperTail.binomial(0, 0, 0)).isEqualTo(1);
    }
}
