package org.pumpwright.host.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CoverageFactorTest {
    /**
     * JCGM 100:2008, table G.2, printed to 0.01, from 50 degrees of freedom on to 0.001 in the last row but one. The row of 35 is left
     * out: its 90 % column is printed as 1.70, which is not the rounded 1.690.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 6.31, 12.71, 13.97, 63.66",
        "2, 2.92, 4.30, 4.53, 9.92",
        "4, 2.13, 2.78, 2.87, 4.60",
        "9, 1.83, 2.26, 2.32, 3.25",
        "12, 1.78, 2.18, 2.23, 3.05",
        "16, 1.75, 2.12, 2.17, 2.92",
        "19, 1.73, 2.09, 2.14, 2.86",
        "25, 1.71, 2.06, 2.11, 2.79",
        "50, 1.68, 2.01, 2.05, 2.68",
        "Infinity, 1.645, 1.960, 2.000, 2.576"
    })
    void tableOfStudentsT(double degreesOfFreedom, double p90, double p95, double p9545, double p99) {
        double half = Double.isInfinite(degreesOfFreedom) ? 5.1e-4 : 5.1e-3;
        assertThat(CoverageFactor.of(0.90, degreesOfFreedom)).isCloseTo(p90, within(half));
        assertThat(CoverageFactor.of(0.95, degreesOfFreedom)).isCloseTo(p95, within(half));
        assertThat(CoverageFactor.of(0.9545, degreesOfFreedom)).isCloseTo(p9545, within(half));
        assertThat(CoverageFactor.of(0.99, degreesOfFreedom)).isCloseTo(p99, within(half));
    }

    @Test
    void manyDegreesOfFreedomGoOverIntoTheNormalFactor() {
        assertThat(CoverageFactor.of(0.95, 0.99e8)).isCloseTo(CoverageFactor.of(0.95, 1.01e8), within(1e-7));
        assertThat(CoverageFactor.of(0.95, 16.5)).isBetween(CoverageFactor.of(0.95, 17), CoverageFactor.of(0.95, 16));
    }

    @Test
    void aLevelOrDegreesOfFreedomThatCannotBeAreRefused() {
        assertThatThrownBy(() -> CoverageFactor.of(1, 5)).hasMessageStartingWith("level of confidence is 1.0");
        assertThatThrownBy(() -> CoverageFactor.of(0.95, 0.5)).hasMessageStartingWith("degrees of freedom is 0.5");
    }
}
