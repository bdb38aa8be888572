package org.pumpwright.host.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CoverageFactorTest {
    /**
     * Levels of the columns of JCGM 100:2008, table G.2. Its 68.27, 95.45 and 99.73 % are the shares within 1, 2 and 3
     * standard deviations of a normal distribution; at 1 degree of freedom the digits it does not print show.
     */
    private static final double[] LEVELS = {0.682689492, 0.90, 0.95, 0.954499736, 0.99, 0.997300204};

    /** Rows of that table; it prints two decimals. */
    @ParameterizedTest
    @CsvSource({
        "1, 1.84, 6.31, 12.71, 13.97, 63.66, 235.80",
        "2, 1.32, 2.92, 4.30, 4.53, 9.92, 19.21",
        "4, 1.14, 2.13, 2.78, 2.87, 4.60, 6.62",
        "9, 1.06, 1.83, 2.26, 2.32, 3.25, 4.09",
        "16, 1.03, 1.75, 2.12, 2.17, 2.92, 3.54",
        "25, 1.02, 1.71, 2.06, 2.11, 2.79, 3.33",
        "50, 1.01, 1.68, 2.01, 2.05, 2.68, 3.16",
        "Infinity, 1.00, 1.645, 1.96, 2.00, 2.576, 3.00"
    })
    void theFactorsAreThoseOfThePublishedTable(
            double dof, double at68, double at90, double at95, double at9545, double at99, double at9973) {
        double[] published = {at68, at90, at95, at9545, at99, at9973};
        for (int i = 0; i < LEVELS.length; i++) {
            assertThat(CoverageFactor.of(LEVELS[i], dof)).isCloseTo(published[i], within(0.0051));
        }
    }

    @Test
    void theFactorsGoOverIntoTheNormalDistributions() {
        assertThat(CoverageFactor.of(0.95, 9.9e7)).isCloseTo(CoverageFactor.of(0.95, 1.01e8), within(1e-6));
        assertThat(CoverageFactor.of(0.95, Double.POSITIVE_INFINITY)).isCloseTo(1.959964, within(1e-6));
    }

    @Test
    void degreesOfFreedomBetweenWholeOnesGiveAFactorBetween() {
        assertThat(CoverageFactor.of(0.99, 16.75)).isBetween(CoverageFactor.of(0.99, 17), CoverageFactor.of(0.99, 16));
    }

    @Test
    void anIntervalWithoutDegreesOfFreedomIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CoverageFactor.of(0.95, 0.5))
                .withMessageContaining("degrees of freedom is 0.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CoverageFactor.of(1, 10))
                .withMessageContaining("level of confidence is 1.0");
    }
}
