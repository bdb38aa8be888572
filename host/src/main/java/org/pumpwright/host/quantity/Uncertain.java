package org.pumpwright.host.quantity;

/**
 * A measured value with its standard uncertainty and the degrees of freedom behind it, in the words of JCGM 100 (GUM).
 * The unit is that of the place where it stands. Thread-safe.
 *
 * @param value the estimate, finite
 * @param standardUncertainty one standard deviation, 0 or more, same unit
 * @param degreesOfFreedom above 0; infinite where the uncertainty is taken as exactly known
 */
public record Uncertain(double value, double standardUncertainty, double degreesOfFreedom) {
    public Uncertain {
        Require.finite("value", value);
        Require.inRange("standard uncertainty", standardUncertainty, 0, Double.MAX_VALUE, "");
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "degrees of freedom are %s, they must be above 0".formatted(degreesOfFreedom));
        }
    }

    /** A value whose uncertainty is taken as exactly known (a Type B statement without reservation). */
    public static Uncertain of(double value, double standardUncertainty) {
        return new Uncertain(value, standardUncertainty, Double.POSITIVE_INFINITY);
    }

    /** Standard uncertainty over value; 0/0 is not a number. */
    public double relative() {
        return standardUncertainty / Math.abs(value);
    }

    /** The value and its uncertainty in another unit, or as seen through a linear conversion. */
    public Uncertain times(double factor) {
        return new Uncertain(value * factor, standardUncertainty * Math.abs(factor), degreesOfFreedom);
    }

    /**
     * This value with one more independent uncertainty added in quadrature (JCGM 100, 5.1.2). The effective degrees of
     * freedom follow Welch and Satterthwaite (JCGM 100, G.4.1).
     */
    public Uncertain with(double moreStandardUncertainty, double moreDegreesOfFreedom) {
        double u2 = standardUncertainty * standardUncertainty + moreStandardUncertainty * moreStandardUncertainty;
        double denominator =
                share(standardUncertainty, degreesOfFreedom) + share(moreStandardUncertainty, moreDegreesOfFreedom);
        double dof = denominator == 0 ? Double.POSITIVE_INFINITY : u2 * u2 / denominator;
        return new Uncertain(value, Math.sqrt(u2), dof);
    }

    private static double share(double u, double dof) {
        return Double.isInfinite(dof) ? 0 : Math.pow(u, 4) / dof;
    }
}
