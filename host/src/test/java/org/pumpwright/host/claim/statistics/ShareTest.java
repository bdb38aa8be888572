package org.pumpwright.host.claim.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;
import org.junit.jupiter.api.Test;

/** Shares and their intervals. */
final class ShareTest {
    private static final double Z = 1.959963984540054;

    @Test
    void nineOfTwentySixLieBetweenNineteenAndFiftyFourPercent() {
        Share share = new Share(9, 26);

        assertThat(share.value()).isCloseTo(0.346, within(0.0005));
        assertThat(share.interval().low()).isCloseTo(0.19, within(0.005));
        assertThat(share.interval().high()).isCloseTo(0.54, within(0.005));
    }

    /** At an end p the count is 1.96 standard deviations of p itself away: what defines the score interval. */
    @Property(tries = 200, seed = "11")
    void eachEndIsJustAsFarFromTheCountAsItsOwnSpreadAllows(
            @ForAll @IntRange(min = 1, max = 3000) int of, @ForAll @IntRange(min = 0, max = 3000) int some) {
        Share share = new Share(some % (of + 1), of);

        for (double end : new double[] {share.interval().low(), share.interval().high()}) {
            double spread = Z * Math.sqrt(end * (1 - end) / of);
            boolean atTheEdge = end == 0 || end == 1;
            assertThat(Math.abs(share.value() - end)).isCloseTo(atTheEdge ? 0 : spread, within(1e-9));
        }
    }

    @Property(tries = 100, seed = "12")
    void anotherLibraryFindsTheSameInterval(
            @ForAll @IntRange(min = 2, max = 500) int of, @ForAll @IntRange(min = 1, max = 500) int some) {
        Share share = new Share(1 + some % (of - 1), of);
        ConfidenceInterval other = new WilsonScoreInterval().createInterval(of, share.hits(), 0.95);

        assertThat(share.interval().low()).isCloseTo(other.getLowerBound(), within(1e-9));
        assertThat(share.interval().high()).isCloseTo(other.getUpperBound(), within(1e-9));
    }

    @Test
    void noneOfTwentyStillLeavesRoomForSome() {
        assertThat(new Share(0, 20).interval().low()).isZero();
        assertThat(new Share(0, 20).interval().high()).isCloseTo(Z * Z / (20 + Z * Z), within(1e-12));
    }

    @Test
    void aShareOfNothingIsRefused() {
        assertThatThrownBy(() -> new Share(0, 0)).hasMessage("share of 0: there must be 1 or more to take a share of");
        assertThatThrownBy(() -> new Share(5, 4)).hasMessage("5 of 4: must lie between 0 and 4");
    }
}
