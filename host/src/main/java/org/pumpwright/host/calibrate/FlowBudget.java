package org.pumpwright.host.calibrate;

import java.util.List;
import java.util.Optional;

/**
 * All sources of uncertainty of K at one flow, independent of each other. Thread-safe.
 *
 * @param terms each effect at most once
 */
public record FlowBudget(List<BudgetTerm> terms) {
    public FlowBudget {
        terms = List.copyOf(terms);
        if (terms.stream().map(BudgetTerm::effect).distinct().count() != terms.size()) {
            throw new IllegalArgumentException("a budget has an effect twice: " + terms);
        }
    }

    public Optional<BudgetTerm> term(Effect effect) {
        return terms.stream().filter(term -> term.effect() == effect).findFirst();
    }

    /** Change of K with an effect, 0 where the effect plays no part. */
    double change(Effect effect) {
        return term(effect).map(BudgetTerm::change).orElse(0.0);
    }

    /** Combined standard uncertainty as a share of K: the root of the sum of squares (JCGM 100, 5.1.2). */
    public double combinedShare() {
        double sum = 0;
        for (BudgetTerm term : terms) {
            sum += term.change() * term.change();
        }
        return Math.sqrt(sum);
    }
}
