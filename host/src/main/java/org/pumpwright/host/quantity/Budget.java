package org.pumpwright.host.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * An uncertainty budget: how the uncertainties of correlated inputs carry through to a result, to first order (JCGM 100,
 * 5.1.2 and 5.2.2). Sums run in the order of the lines, so the same budget gives the same bits everywhere. Thread-safe.
 *
 * @param value the result's estimate, finite
 * @param lines the inputs, at least one, each name once
 * @param correlations which inputs go together; pairs that are not named do not
 */
public record Budget(double value, List<BudgetLine> lines, List<Correlation> correlations) {
    /** A variance that comes out below 0 by no more than this share of its parts is rounding. */
    private static final double ROUNDING = 1e-12;

    /**
     * @throws IllegalArgumentException when a name is missing or comes twice, or when the correlations contradict each other
     *     so that the variance would be negative
     */
    public Budget {
        Require.finite("result of the budget", value);
        lines = List.copyOf(lines);
        correlations = List.copyOf(correlations);
        requireNames(lines, correlations);
        double parts = 0;
        for (BudgetLine line : lines) {
            parts += square(line.contribution());
        }
        double variance = sum(lines, lines, correlations);
        if (variance < -ROUNDING * parts) {
            throw new IllegalArgumentException(
                    "correlations contradict each other: the variance comes out as %s, it cannot be below 0"
                            .formatted(variance));
        }
    }

    /** A budget of independent inputs. */
    public static Budget of(double value, List<BudgetLine> lines) {
        return new Budget(value, lines, List.of());
    }

    /**
     * The budget of a measurement model. Each sensitivity is the change of the result over a move of its input by one
     * standard uncertainty up and down (JCGM 100, 5.1.3, note 2).
     *
     * @param inputs values and uncertainties, in the order in which the model takes them
     * @param correlations which inputs go together
     * @param model from the inputs' values to the result
     */
    public static Budget through(
            List<BudgetInput> inputs, List<Correlation> correlations, ToDoubleFunction<double[]> model) {
        double[] at =
                inputs.stream().mapToDouble(input -> input.quantity().value()).toArray();
        List<BudgetLine> lines = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            BudgetInput input = inputs.get(i);
            double step = input.step();
            double change = model.applyAsDouble(moved(at, i, step)) - model.applyAsDouble(moved(at, i, -step));
            Uncertain quantity = input.quantity();
            lines.add(new BudgetLine(
                    input.name(), quantity.standardUncertainty(), quantity.degreesOfFreedom(), change / (2 * step)));
        }
        return new Budget(model.applyAsDouble(at), lines, correlations);
    }

    /** The combined standard uncertainty, in the result's unit. */
    public double standardUncertainty() {
        return Math.sqrt(Math.max(0, sum(lines, lines, correlations)));
    }

    /**
     * Effective degrees of freedom after Welch and Satterthwaite (JCGM 100, G.4.1). The formula is for independent inputs;
     * inputs that are correlated with each other, directly or through others, enter as one, with the least degrees of
     * freedom among them. Infinite where nothing is uncertain.
     */
    public double degreesOfFreedom() {
        double variance = square(standardUncertainty());
        double denominator = 0;
        for (List<BudgetLine> group : groups()) {
            double dof = group.stream()
                    .filter(line -> line.contribution() != 0)
                    .mapToDouble(BudgetLine::degreesOfFreedom)
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            denominator += square(sum(group, group, correlations)) / dof;
        }
        return denominator == 0 ? Double.POSITIVE_INFINITY : variance * variance / denominator;
    }

    /** The result with its uncertainty. */
    public Uncertain result() {
        return new Uncertain(value, standardUncertainty(), degreesOfFreedom());
    }

    /**
     * Half the width of the interval of a level of confidence: coverage factor times standard uncertainty.
     *
     * @param level 0.5 to 0.9999
     * @throws IllegalArgumentException when fewer than 1 effective degrees of freedom are left
     */
    public double expanded(double level) {
        return CoverageFactor.of(level, degreesOfFreedom()) * standardUncertainty();
    }

    /**
     * Covariance with another result of the same inputs (JCGM 100, H.2.3, equation H.9). Inputs are the same when their names
     * are; the correlations of this budget count.
     */
    public double covariance(Budget other) {
        return sum(lines, other.lines, correlations);
    }

    /** Correlation with another result of the same inputs; not a number where one of them is exact. */
    public double correlation(Budget other) {
        return covariance(other) / (standardUncertainty() * other.standardUncertainty());
    }

    /** Inputs in groups: between groups there is no correlation. */
    private List<List<BudgetLine>> groups() {
        List<List<BudgetLine>> groups = new ArrayList<>();
        for (BudgetLine line : lines) {
            List<BudgetLine> joined = new ArrayList<>(List.of(line));
            for (List<BudgetLine> group : List.copyOf(groups)) {
                if (group.stream().anyMatch(member -> coefficient(member, line, correlations) != 0)) {
                    groups.remove(group);
                    joined.addAll(0, group);
                }
            }
            groups.add(joined);
        }
        return groups;
    }

    private static double sum(List<BudgetLine> ones, List<BudgetLine> others, List<Correlation> correlations) {
        double sum = 0;
        for (BudgetLine one : ones) {
            for (BudgetLine other : others) {
                sum += one.contribution() * other.contribution() * coefficient(one, other, correlations);
            }
        }
        return sum;
    }

    private static double coefficient(BudgetLine one, BudgetLine other, List<Correlation> correlations) {
        if (one.name().equals(other.name())) {
            return 1;
        }
        for (Correlation correlation : correlations) {
            if (correlation.joins(one, other)) {
                return correlation.coefficient();
            }
        }
        return 0;
    }

    private static void requireNames(List<BudgetLine> lines, List<Correlation> correlations) {
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("a budget needs at least one input");
        }
        Set<String> names = new HashSet<>();
        for (BudgetLine line : lines) {
            if (!names.add(line.name())) {
                throw new IllegalArgumentException("%s is in the budget twice".formatted(line.name()));
            }
        }
        Set<Set<String>> pairs = new HashSet<>();
        for (Correlation correlation : correlations) {
            for (String name : List.of(correlation.one(), correlation.other())) {
                if (!names.contains(name)) {
                    throw new IllegalArgumentException("%s is correlated but not in the budget".formatted(name));
                }
            }
            if (!pairs.add(Set.of(correlation.one(), correlation.other()))) {
                throw new IllegalArgumentException("the correlation of %s and %s is given twice"
                        .formatted(correlation.one(), correlation.other()));
            }
        }
    }

    private static double[] moved(double[] at, int index, double step) {
        double[] moved = Arrays.copyOf(at, at.length);
        moved[index] += step;
        return moved;
    }

    private static double square(double x) {
        return x * x;
    }
}
