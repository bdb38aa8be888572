package org.pumpwright.host.quantity;

/**
 * How two inputs of an uncertainty budget go together (JCGM 100, 5.2.2). Thread-safe.
 *
 * @param one name of an input
 * @param other name of another input
 * @param coefficient -1 to 1
 */
public record Correlation(String one, String other, double coefficient) {
    public Correlation {
        Require.inRange("correlation of %s and %s".formatted(one, other), coefficient, -1, 1, "");
        if (one.equals(other)) {
            throw new IllegalArgumentException("%s is correlated with itself".formatted(one));
        }
    }

    boolean joins(BudgetLine a, BudgetLine b) {
        return names(a, b) || names(b, a);
    }

    private boolean names(BudgetLine first, BudgetLine second) {
        return one.equals(first.name()) && other.equals(second.name());
    }
}
