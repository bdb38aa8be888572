package org.pumpwright.host.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.signal.Statistics;

class ToleranceFactorTest {

    /** Statistics for Environmental Engineers, table 21.1: two-sided factors at 95 % confidence, two decimals. */
    @ParameterizedTest
    @CsvSource({
        "4, 0.90, 5.37", "4, 0.99, 8.22", "5, 0.95, 5.08", "6, 0.90, 3.73", "7, 0.95, 4.02", "8, 0.99, 4.89",
        "9, 0.95, 3.55", "10, 0.90, 2.86", "10, 0.99, 4.44", "12, 0.95, 3.17", "15, 0.90, 2.49", "15, 0.99, 3.89",
        "20, 0.95, 2.76", "25, 0.99, 3.46", "30, 0.95, 2.55", "40, 0.90, 2.06", "60, 0.95, 2.34"
    })
    void publishedTwoSidedFactorsComeOut(int units, double coverage, double published) {
        assertThat(ToleranceFactor.twoSided(units, coverage, 0.95)).isCloseTo(published, within(0.00501));
    }

    /** Howe's approximation in the NIST/SEMATECH e-Handbook, 7.2.6.3, is 2.2173 here; the exact factor is 2.2228. */
    @Test
    void isExactWhereTheHandbookApproximates() {
        assertThat(ToleranceFactor.twoSided(43, 0.90, 0.99)).isCloseTo(2.2228, within(0.00006));
    }

    @Test
    void twoUnitsNeedAVeryWideInterval() {
        assertThat(ToleranceFactor.twoSided(2, 0.95, 0.95)).isCloseTo(36.519, within(0.001));
    }

    @Test
    void manyUnitsComeDownToTheNormalQuantile() {
        assertThat(ToleranceFactor.twoSided(10_000, 0.95, 0.5)).isCloseTo(1.96, within(0.002));
    }

    @Test
    void holdsItsCoverageWithItsConfidenceInAMonteCarlo() {
        double k = ToleranceFactor.twoSided(10, 0.95, 0.95);
        NormalDistribution normal = new NormalDistribution();
        Random random = new Random(77);
        int held = 0;
        int trials = 20_000;
        for (int trial = 0; trial < trials; trial++) {
            double[] sample =
                    random.doubles(10).map(normal::inverseCumulativeProbability).toArray();
            double mean = Statistics.mean(sample);
            double half = k * Statistics.deviation(sample);
            held += normal.probability(mean - half, mean + half) >= 0.95 ? 1 : 0;
        }
        assertThat((double) held / trials).isCloseTo(0.95, within(0.005));
    }

    @Test
    void severalFeaturesTogetherNeedAWiderIntervalThanOne() {
        double one = ToleranceFactor.twoSided(20, 0.95, 0.95);
        double six = ToleranceFactor.joint(20, 6, 0.95, 0.95);
        assertThat(six).isEqualTo(ToleranceFactor.twoSided(20, 1 - 0.05 / 6, 0.95));
        assertThat(six).isBetween(one + 0.8, one + 1.0);
        assertThat(ToleranceFactor.joint(20, 1, 0.95, 0.95)).isEqualTo(one);
    }

    /** Computed with a noncentral t; n = 10, 20, 30, 50 are also those of ISO 16269-6 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "2, 0.95, 26.2597",
        "5, 0.95, 4.2027",
        "10, 0.95, 2.9110",
        "20, 0.95, 2.3960",
        "50, 0.95, 2.0650",
        "100, 0.95, 1.9265",
        "2, 0.90, 20.5815",
        "10, 0.90, 2.3546",
        "17, 0.90, 2.0017"
    })
    void oneSidedFactorsComeOut(int units, double coverage, double known) {
        assertThat(ToleranceFactor.oneSided(units, coverage, 0.95)).isCloseTo(known, within(0.00006));
    }

    /** NIST/SEMATECH e-Handbook, 7.2.6.3: Natrella's approximation is 1.8752 here, the noncentral t gives 1.8740. */
    @Test
    void theOneSidedFactorIsExactWhereTheHandbookApproximates() {
        assertThat(ToleranceFactor.oneSided(43, 0.90, 0.99)).isCloseTo(1.87395, within(0.00001));
    }

    @Property(tries = 40, seed = "6")
    void factorsFallWithTheUnitsAndRiseWithCoverageAndConfidence(
            @ForAll @IntRange(min = 2, max = 60) int units,
            @ForAll @DoubleRange(min = 0.6, max = 0.98) double coverage,
            @ForAll @DoubleRange(min = 0.6, max = 0.98) double confidence) {
        double k1 = ToleranceFactor.oneSided(units, coverage, confidence);
        double k2 = ToleranceFactor.twoSided(units, coverage, confidence);
        assertThat(k2).isGreaterThan(k1);
        assertThat(ToleranceFactor.oneSided(units + 1, coverage, confidence)).isLessThan(k1);
        assertThat(ToleranceFactor.twoSided(units + 1, coverage, confidence)).isLessThan(k2);
        assertThat(ToleranceFactor.oneSided(units, coverage + 0.01, confidence)).isGreaterThan(k1);
        assertThat(ToleranceFactor.twoSided(units, coverage + 0.01, confidence)).isGreaterThan(k2);
        assertThat(ToleranceFactor.oneSided(units, coverage, confidence + 0.01)).isGreaterThan(k1);
        assertThat(ToleranceFactor.twoSided(units, coverage, confidence + 0.01)).isGreaterThan(k2);
    }

    @Test
    void moreDegreesOfFreedomThanUnitsNarrowTheLimits() {
        double plain = ToleranceFactor.twoSided(10, 0.95, 0.95);
        assertThat(ToleranceFactor.twoSided(10.0, 9, 0.95, 0.95)).isEqualTo(plain);
        assertThat(ToleranceFactor.twoSided(10.0, 15, 0.95, 0.95)).isLessThan(plain);
        assertThat(ToleranceFactor.twoSided(15.0, 9, 0.95, 0.95)).isLessThan(plain);
    }

    @Test
    void asksForAtLeastTwoUnits() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ToleranceFactor.twoSided(1, 0.95, 0.95))
                .withMessageStartingWith("number of units is 1.0");
    }
}
