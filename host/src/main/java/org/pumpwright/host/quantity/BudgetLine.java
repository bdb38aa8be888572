package org.pumpwright.host.quantity;

/**
 * One input of an uncertainty budget and how strongly the result follows it (JCGM 100, 5.1.3). Thread-safe.
 *
 * @param name the input, in words; correlations refer to it
 * @param standardUncertainty of the input, in its own unit, 0 or more
 * @param degreesOfFreedom behind it, above 0; infinite where it is taken as exactly known
 * @param sensitivity partial derivative of the result by the input, finite
 */
public record BudgetLine(String name, double standardUncertainty, double degreesOfFreedom, double sensitivity) {
    public BudgetLine {
        if (name.isBlank()) {
            throw new IllegalArgumentException("an input of a budget needs a name");
        }
        Require.inRange("standard uncertainty of " + name, standardUncertainty, 0, Double.MAX_VALUE, "");
        Require.finite("sensitivity to " + name, sensitivity);
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "degrees of freedom of %s are %s, they must be above 0".formatted(name, degreesOfFreedom));
        }
    }

    /** What the input's standard uncertainty does to the result, in the result's unit and with the sensitivity's sign. */
    public double contribution() {
        return sensitivity * standardUncertainty;
    }
}
