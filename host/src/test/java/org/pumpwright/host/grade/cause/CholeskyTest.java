package org.pumpwright.host.grade.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class CholeskyTest {
    /** Variances 4 and 9, correlation 0.5: determinant 27, inverse (9, -3; -3, 4) / 27, by hand. */
    private static final Cholesky ROOT = new Cholesky(new double[][] {{4, 3}, {3, 9}});

    @Test
    void distanceAndDeterminantAreThoseOfTheTextbook() {
        assertThat(ROOT.halfLogDeterminant()).isCloseTo(0.5 * Math.log(27), within(1e-12));
        assertThat(ROOT.squaredDistance(new double[] {2, -1})).isCloseTo((36 + 12 + 4) / 27.0, within(1e-12));
    }

    @Test
    void leavingOutAReadingTakesAwayWhatTheOtherDoesNotExplain() {
        double[] off = {2, -1};
        double withoutFirst = 1 / 9.0;
        double withoutSecond = 4 / 4.0;

        double most = ROOT.squaredDistance(off) - Math.min(withoutFirst, withoutSecond);

        assertThat(ROOT.largestShare(off)).isCloseTo(most, within(1e-12));
    }
}
