package org.pumpwright.host.calibrate;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pumpwright.host.quantity.Budget;
import org.pumpwright.host.quantity.BudgetLine;

/**
 * Uncertainty of a weighted sum of the K of several flows. An effect that the flows share is one input of all of them and so is
 * added up with its sign before it is squared; any other is an input of its own at each flow. That is how correlations that come from
 * common inputs are carried (JCGM 100, 5.2.4 and F.1.2.3).
 */
final class Propagation {
    private static final String ONE = "one flow";

    private Propagation() {}

    /** The mean K at one flow, the inputs in standard uncertainties. */
    static Budget ofOne(double pulsesPerM3, FlowBudget budget, String flow) {
        List<BudgetLine> lines = new ArrayList<>();
        for (BudgetTerm term : budget.terms()) {
            String name = name(term.effect(), flow);
            lines.add(new BudgetLine(name, 1, term.degreesOfFreedom(), term.change() * pulsesPerM3));
        }
        return Budget.of(pulsesPerM3, lines);
    }

    /** The mean K at one flow with how flat its error is. */
    static Combined combined(double pulsesPerM3, FlowBudget budget) {
        Map<String, Effect> effects = new HashMap<>();
        budget.terms().forEach(term -> effects.put(name(term.effect(), ONE), term.effect()));
        return combined(ofOne(pulsesPerM3, budget, ONE), effects);
    }

    /** The sum of the points' K, each times its weight. */
    static Combined ofPoints(List<FlowPoint> points, double[] weights) {
        double value = 0;
        Map<String, BudgetLine> sums = new LinkedHashMap<>();
        Map<String, Effect> effects = new HashMap<>();
        for (int i = 0; i < weights.length; i++) {
            FlowPoint point = points.get(i);
            point.budget().terms().forEach(term -> effects.put(name(term.effect(), point.name()), term.effect()));
            Budget one = point.inPulsesPerM3();
            value += weights[i] * one.value();
            for (BudgetLine line : one.lines()) {
                sums.merge(line.name(), times(line, weights[i]), Propagation::plus);
            }
        }
        return combined(Budget.of(value, List.copyOf(sums.values())), effects);
    }

    private static Combined combined(Budget budget, Map<String, Effect> effects) {
        double flat = 0;
        double rest = 0;
        for (BudgetLine line : budget.lines()) {
            double square = line.contribution() * line.contribution();
            double flatness = requireNonNull(effects.get(line.name())).flatness();
            flat += flatness * square * square;
            rest += flatness == 0 ? square * square / line.degreesOfFreedom() : 0;
        }
        return new Combined(budget, flat, rest);
    }

    private static String name(Effect effect, String flow) {
        return effect.words() + (effect.sharedByFlows() ? "" : " at " + flow);
    }

    private static BudgetLine times(BudgetLine line, double weight) {
        return new BudgetLine(
                line.name(), line.standardUncertainty(), line.degreesOfFreedom(), weight * line.sensitivity());
    }

    private static BudgetLine plus(BudgetLine one, BudgetLine other) {
        return new BudgetLine(
                one.name(),
                one.standardUncertainty(),
                Math.min(one.degreesOfFreedom(), other.degreesOfFreedom()),
                one.sensitivity() + other.sensitivity());
    }
}
