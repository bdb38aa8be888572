package org.pumpwright.host.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** The examples of JCGM 100:2008 (GUM); the tolerance is half of their last printed digit unless something else is said. */
final class BudgetTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private static final double[] VOLTS = {5.007, 4.994, 5.005, 4.990, 4.999};
    private static final double[] AMPS = {19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3};
    private static final double[] RADIANS = {1.0456, 1.0438, 1.0468, 1.0428, 1.0433};

    /** H.1, lengths in nm: u(l) = 32 nm, 16 effective degrees of freedom, U at 99 % = 93 nm, from 32 nm rounded up. */
    @Test
    void endGauge() {
        Budget length = Budget.through(
                List.of(
                        input("standard", 50_000_623, 25, 18),
                        input("difference", 215, 9.7, 25.6),
                        input("expansion", 11.5e-6, 2e-6 / Math.sqrt(3), INFINITE),
                        input("difference of expansion", 0, 1e-6 / Math.sqrt(3), 50),
                        input("temperature", -0.1, 0.41, INFINITE),
                        input("difference of temperature", 0, 0.05 / Math.sqrt(3), 2)),
                List.of(),
                x -> x[0] + x[1] - x[0] * (x[3] * x[4] + x[2] * x[5]));

        assertThat(length.value()).isCloseTo(50_000_838, within(0.5));
        assertThat(Math.abs(length.lines().get(3).contribution())).isCloseTo(2.9, within(0.05));
        assertThat(Math.abs(length.lines().get(5).contribution())).isCloseTo(16.6, within(0.05));
        assertThat(length.standardUncertainty()).isCloseTo(32, within(0.5));
        assertThat(Math.floor(length.degreesOfFreedom())).isEqualTo(16);
        assertThat(CoverageFactor.of(0.99, 16) * 32).isCloseTo(93, within(0.6));
    }

    /** H.2, table H.3: resistance, reactance and impedance from five sets of readings; u(X) is printed cut off, 0.295 for 0.2956. */
    @Test
    void resistanceAndReactanceFromCorrelatedReadings() {
        List<Budget> results = impedance(List.of(
                new Correlation("V", "I", coefficient(VOLTS, AMPS)),
                new Correlation("V", "phi", coefficient(VOLTS, RADIANS)),
                new Correlation("I", "phi", coefficient(AMPS, RADIANS))));

        assertThat(coefficient(VOLTS, AMPS)).isCloseTo(-0.36, within(0.005));
        assertThat(coefficient(VOLTS, RADIANS)).isCloseTo(0.86, within(0.005));
        assertThat(coefficient(AMPS, RADIANS)).isCloseTo(-0.65, within(0.005));
        holds(results.get(0), 127.732, 0.071);
        holds(results.get(1), 219.847, 0.2956);
        holds(results.get(2), 254.260, 0.236);
        assertThat(results.get(0).correlation(results.get(1))).isCloseTo(-0.588, within(5e-4));
        assertThat(results.get(0).correlation(results.get(2))).isCloseTo(-0.485, within(5e-4));
        assertThat(results.get(1).correlation(results.get(2))).isCloseTo(0.993, within(6e-4));
    }

    /** H.2, table H.5: what comes out when the correlations are forgotten. */
    @Test
    void forgottenCorrelationsChangeEveryUncertainty() {
        List<Budget> results = impedance(List.of());

        holds(results.get(0), 127.732, 0.195);
        holds(results.get(1), 219.847, 0.201);
        holds(results.get(2), 254.260, 0.204);
        assertThat(results.get(0).correlation(results.get(1))).isCloseTo(0.056, within(5e-4));
        assertThat(results.get(0).correlation(results.get(2))).isCloseTo(0.527, within(5e-4));
        assertThat(results.get(1).correlation(results.get(2))).isCloseTo(0.878, within(5e-4));
    }

    /** G.4.1: a product of three inputs known to 0.25, 0.57 and 0.82 % from 10, 5 and 15 readings: 1.03 %, 19.0, t = 2.09, 2.2 %. */
    @Test
    void productOfThreeInputs() {
        Budget product = Budget.of(
                100,
                List.of(
                        new BudgetLine("X1", 0.25, 9, 1),
                        new BudgetLine("X2", 0.57, 4, 1),
                        new BudgetLine("X3", 0.82, 14, 1)));

        assertThat(product.standardUncertainty()).isCloseTo(1.03, within(0.005));
        assertThat(product.degreesOfFreedom()).isCloseTo(19.0, within(0.05));
        assertThat(CoverageFactor.of(0.95, product.degreesOfFreedom())).isCloseTo(2.09, within(0.005));
        assertThat(product.expanded(0.95)).isCloseTo(2.2, within(0.05));
    }

    /** 5.2.2: ten resistors of 1000 ohm, all set by one standard of 0.1 ohm, in series: 1 ohm together, not 0.32. */
    @Test
    void errorsInCommonAddWithoutSquares() {
        List<BudgetLine> resistors = DoubleStream.iterate(1, n -> n <= 10, n -> n + 1)
                .mapToObj(n -> new BudgetLine("R" + n, 0.1, INFINITE, 1))
                .toList();
        List<Correlation> allShared = resistors.stream()
                .flatMap(one -> resistors.stream()
                        .filter(other -> other.name().compareTo(one.name()) > 0)
                        .map(other -> new Correlation(one.name(), other.name(), 1)))
                .toList();

        assertThat(new Budget(10_000, resistors, allShared).standardUncertainty())
                .isCloseTo(1, within(1e-12));
        assertThat(Budget.of(10_000, resistors).standardUncertainty()).isCloseTo(0.32, within(0.005));
    }

    @Test
    void whatCannotBeABudgetIsRefused() {
        BudgetLine a = new BudgetLine("a", 1, 5, 1);
        BudgetLine b = new BudgetLine("b", 1, 5, 1);
        BudgetLine c = new BudgetLine("c", 1, 5, 1);
        assertThatThrownBy(() -> Budget.of(1, List.of())).hasMessage("a budget needs at least one input");
        assertThatThrownBy(() -> Budget.of(1, List.of(a, a))).hasMessage("a is in the budget twice");
        assertThatThrownBy(() -> new Budget(1, List.of(a), List.of(new Correlation("a", "b", 0.5))))
                .hasMessage("b is correlated but not in the budget");
        assertThatThrownBy(() -> new Budget(
                        1,
                        List.of(a, b, c),
                        List.of(
                                new Correlation("a", "b", -1),
                                new Correlation("a", "c", -1),
                                new Correlation("b", "c", -1))))
                .hasMessageStartingWith("correlations contradict each other");
    }

    private static List<Budget> impedance(List<Correlation> correlations) {
        List<BudgetInput> inputs = List.of(mean("V", VOLTS), mean("I", AMPS), mean("phi", RADIANS));
        return List.of(
                Budget.through(inputs, correlations, x -> x[0] / x[1] * Math.cos(x[2])),
                Budget.through(inputs, correlations, x -> x[0] / x[1] * Math.sin(x[2])),
                Budget.through(inputs, correlations, x -> x[0] / x[1]));
    }

    private static void holds(Budget result, double value, double standardUncertainty) {
        assertThat(result.value()).isCloseTo(value, within(6e-4));
        assertThat(result.standardUncertainty()).isCloseTo(standardUncertainty, within(5e-4));
    }

    private static BudgetInput input(String name, double value, double standardUncertainty, double degreesOfFreedom) {
        return new BudgetInput(name, new Uncertain(value, standardUncertainty, degreesOfFreedom));
    }

    private static BudgetInput mean(String name, double... readings) {
        int n = readings.length;
        return input(name, average(readings), Math.sqrt(product(readings, readings) / (n * (n - 1.0))), n - 1);
    }

    private static double coefficient(double[] a, double[] b) {
        return product(a, b) / Math.sqrt(product(a, a) * product(b, b));
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - average(a)) * (b[i] - average(b));
        }
        return sum;
    }

    private static double average(double[] readings) {
        return DoubleStream.of(readings).average().orElseThrow();
    }
}
