package org.pumpwright.host.quantity;

/**
 * A named input of a measurement model. Thread-safe.
 *
 * @param name in words
 * @param quantity its value and uncertainty, in the unit that the model takes
 */
public record BudgetInput(String name, Uncertain quantity) {
    private static final double SMALL = 1e-6;

    /**
     * How far the input is moved to see the result follow: its standard uncertainty (JCGM 100, 5.1.3, note 2), or a
     * millionth where it has none.
     */
    double step() {
        double u = quantity.standardUncertainty();
        return u > 0 ? u : SMALL * Math.max(SMALL, Math.abs(quantity.value()));
    }
}
