package org.pumpwright.host.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class VarianceComponentsTest {
    /** Silicon resistivity, five instruments, five readings each: NIST Statistical Reference Datasets, SiRstv. */
    private static final List<double[]> SILICON = List.of(
            new double[] {196.3052, 196.1240, 196.1890, 196.2569, 196.3403},
            new double[] {196.3042, 196.3825, 196.1669, 196.3257, 196.0422},
            new double[] {196.1303, 196.2005, 196.2889, 196.0343, 196.1811},
            new double[] {196.2795, 196.1748, 196.1494, 196.1485, 195.9885},
            new double[] {196.2119, 196.1051, 196.1850, 196.0052, 196.2090});

    private static final double CERTIFIED_BETWEEN = 1.27865654000000E-02;
    private static final double CERTIFIED_WITHIN = 1.08318280000000E-02;

    @Test
    void certifiedMeanSquaresComeOut() {
        VarianceComponents found = VarianceComponents.of(SILICON);
        assertThat(found.runVariance()).isCloseTo(CERTIFIED_WITHIN, within(1e-13));
        assertThat(5 * found.unitVariance() + found.runVariance()).isCloseTo(CERTIFIED_BETWEEN, within(1e-13));
        assertThat(found.meanUncertainty()).isCloseTo(Math.sqrt(CERTIFIED_BETWEEN / 25), within(1e-12));
        assertThat(found.totalVariance()).isCloseTo(CERTIFIED_BETWEEN / 5 + 0.8 * CERTIFIED_WITHIN, within(1e-13));
        double a = CERTIFIED_BETWEEN / 5;
        double b = 0.8 * CERTIFIED_WITHIN;
        assertThat(found.degreesOfFreedom()).isCloseTo((a + b) * (a + b) / (a * a / 4 + b * b / 20), within(1e-9));
    }

    @Test
    void unitsRunOnceAreAPlainSample() {
        VarianceComponents found =
                VarianceComponents.of(List.of(new double[] {1}, new double[] {2}, new double[] {3}, new double[] {4}));
        assertThat(found.totalVariance()).isCloseTo(5.0 / 3, within(1e-12));
        assertThat(found.unitVariance()).isCloseTo(5.0 / 3, within(1e-12));
        assertThat(found.runVariance()).isZero();
        assertThat(found.degreesOfFreedom()).isCloseTo(3, within(1e-12));
        assertThat(found.effectiveUnits()).isCloseTo(4, within(1e-12));
    }

    @Test
    void aSpreadThatTheRunsExplainLeavesNothingToTheUnits() {
        VarianceComponents found = VarianceComponents.of(List.of(new double[] {1, 3}, new double[] {3, 1}));
        assertThat(found.unitVariance()).isZero();
        assertThat(found.runVariance()).isCloseTo(2, within(1e-12));
        assertThat(found.totalVariance()).isCloseTo(1, within(1e-12));
    }

    @Test
    void withUnequalRunsTheComponentsAreRightOnAverage() {
        NormalDraws normal = new NormalDraws(11);
        int[] runs = {1, 1, 2, 2, 3, 5};
        double unit = 0;
        double run = 0;
        double total = 0;
        double mean2 = 0;
        int trials = 20_000;
        for (int trial = 0; trial < trials; trial++) {
            VarianceComponents found = VarianceComponents.of(population(runs, 2, 1, normal));
            unit += found.unitVariance() / trials;
            run += found.runVariance() / trials;
            total += found.totalVariance() / trials;
            mean2 += (found.mean() * found.mean() - Math.pow(found.meanUncertainty(), 2)) / trials;
        }
        assertThat(unit).isCloseTo(4, within(0.1));
        assertThat(run).isCloseTo(1, within(0.02));
        assertThat(total).isCloseTo(5, within(0.1));
        assertThat(mean2).isCloseTo(0, within(0.03));
    }

    /** The degrees of freedom are an approximation: of 3000 draws 93.9 % held, not 95 %. */
    @Test
    void limitsForOneNewRunHoldTheirCoverageWithTheirConfidence() {
        NormalDraws normal = new NormalDraws(12);
        NormalDistribution standard = new NormalDistribution();
        int held = 0;
        int trials = 1000;
        for (int trial = 0; trial < trials; trial++) {
            VarianceComponents found =
                    VarianceComponents.of(population(new int[] {2, 2, 2, 2, 2, 2, 2, 2, 1, 1}, 1, 1, normal));
            double k = ToleranceFactor.twoSided(found.effectiveUnits(), found.degreesOfFreedom(), 0.95, 0.95);
            double half = k * Math.sqrt(found.totalVariance());
            double root2 = Math.sqrt(2);
            held += standard.probability((found.mean() - half) / root2, (found.mean() + half) / root2) >= 0.95 ? 1 : 0;
        }
        assertThat((double) held / trials).isBetween(0.92, 0.97);
    }

    @Property(tries = 200, seed = "3")
    void theDeviationsCarryTheWholeVariance(
            @ForAll @Size(min = 2, max = 8) List<@IntRange(min = 1, max = 4) Integer> runs,
            @ForAll @DoubleRange(min = 0, max = 5) double unitSpread) {
        int[] counts = runs.stream().mapToInt(Integer::intValue).toArray();
        List<double[]> readings = population(counts, unitSpread, 1, new NormalDraws(runs.hashCode()));
        VarianceComponents found = VarianceComponents.of(readings);
        double squares = Arrays.stream(VarianceComponents.deviations(readings))
                .map(d -> d * d)
                .sum();
        assertThat(squares).isCloseTo(found.totalVariance(), within(1e-9 * found.totalVariance()));
        assertThat(found.unitVariance()).isNotNegative();
        assertThat(found.degreesOfFreedom()).isBetween(0.999, found.runs() - 1 + 1e-6);
    }

    @Test
    void oneUnitHasNoSpread() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> VarianceComponents.of(List.of(new double[] {1, 2})))
                .withMessage("a spread between units needs at least 2 units, there are 1");
    }

    private static List<double[]> population(int[] runs, double unitSpread, double runSpread, NormalDraws normal) {
        List<double[]> readings = new ArrayList<>();
        for (int count : runs) {
            double own = unitSpread * normal.next();
            double[] unit = new double[count];
            for (int j = 0; j < count; j++) {
                unit[j] = own + runSpread * normal.next();
            }
            readings.add(unit);
        }
        return readings;
    }
}
