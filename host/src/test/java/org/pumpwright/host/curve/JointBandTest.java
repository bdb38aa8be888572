package org.pumpwright.host.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.curve.FalseFlags.Shape;

class JointBandTest {
    @ParameterizedTest
    @CsvSource({
        "10, 2, 0.0, ALL_ALIKE, 6, 0.9",
        "10, 2, 0.9, ALL_ALIKE, 6, 0.9",
        "20, 2, 0.9, NEIGHBOURS, 8, 0.9",
        "20, 1, 0.95, TWO_HALVES, 6, 0.9",
        "30, 2, 0.7, NEIGHBOURS, 6, 0.4"
    })
    void ofHealthyUnitsAtMostOneInAHundredIsFlagged(
            int units, int runs, double correlation, Shape shape, int features, double unitShare) {
        FalseFlags flags = new FalseFlags(units, runs, correlation, shape, features, unitShare, z -> z);
        FalseFlags.Count count = flags.count(60, 1000, 5000, 2026);
        assertThat(count.share()).isLessThanOrEqualTo(0.01);
        assertThat(count.wilsonUpper()).isLessThanOrEqualTo(0.015);
        assertThat(count.share()).isPositive();
    }

    /** Table of t in JCGM 100, G.2: t is 3.25 for 9 degrees of freedom and 99 %. */
    @Test
    void oneFeatureIsHeldByThePredictionIntervalOfStudent() {
        double k = JointBand.factor(List.of(new double[] {1, -1, 0.5, -0.5}), 10, 9, 0.99);
        assertThat(k).isCloseTo(3.25 * Math.sqrt(1.1), within(0.006));
    }

    @Test
    void featuresThatRepeatEachOtherCostNothing() {
        double[] one = deviations(20, 3);
        double single = JointBand.factor(List.of(one), 20, 19, 0.99);
        double six = JointBand.factor(List.of(one, one, one, one, one, one), 20, 19, 0.99);
        assertThat(six).isBetween(single - 0.02, single + 0.12);
        assertThat(JointBand.bonferroni(6, 20, 19, 0.99)).isGreaterThan(single + 0.6);
    }

    @Test
    void featuresThatKnowNothingOfEachOtherCostAlmostBonferroni() {
        List<double[]> independent = new ArrayList<>();
        for (int f = 0; f < 6; f++) {
            double[] column = new double[6];
            column[f] = 1;
            independent.add(column);
        }
        double k = JointBand.factor(independent, 20, 19, 0.99);
        assertThat(JointBand.bonferroni(6, 20, 19, 0.99) - k).isBetween(0.0, 0.15);
    }

    @Test
    void featuresWithoutSpreadArePassedOver() {
        double[] one = deviations(20, 3);
        assertThat(JointBand.factor(List.of(one, new double[20]), 20, 19, 0.99))
                .isEqualTo(JointBand.factor(List.of(one), 20, 19, 0.99));
    }

    @Property(tries = 30, seed = "5")
    void isNeverBelowOneFeatureNorAboveBonferroniAndShrinksWithTheUnits(
            @ForAll @IntRange(min = 5, max = 30) int units, @ForAll @IntRange(min = 0, max = 1000) int seed) {
        List<double[]> features =
                List.of(deviations(units, seed), deviations(units, seed + 1), deviations(units, seed + 2));
        double k = JointBand.factor(features, units, units - 1, 0.99, 4000, 1);
        assertThat(k).isLessThanOrEqualTo(JointBand.bonferroni(3, units, units - 1, 0.99));
        assertThat(k).isGreaterThan(0.93 * JointBand.bonferroni(1, units, units - 1, 0.99));
        assertThat(JointBand.factor(features, units + 10, units + 9, 0.99, 4000, 1))
                .isLessThan(k);
        assertThat(JointBand.factor(features, units, units - 1, 0.95, 4000, 1)).isLessThan(k);
    }

    @Test
    void theSameUnitsGiveTheSameFactor() {
        List<double[]> features = List.of(deviations(12, 1), deviations(12, 2));
        assertThat(JointBand.factor(features, 12, 11, 0.99)).isEqualTo(JointBand.factor(features, 12, 11, 0.99));
    }

    @Test
    void asksForAtLeastThreeUnits() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JointBand.factor(List.of(new double[] {1, -1}), 2, 1, 0.99))
                .withMessageStartingWith("number of units is 2");
    }

    private static double[] deviations(int units, long seed) {
        NormalDraws normal = new NormalDraws(seed);
        double[] values = new double[units];
        for (int i = 0; i < units; i++) {
            values[i] = normal.next();
        }
        return values;
    }
}
