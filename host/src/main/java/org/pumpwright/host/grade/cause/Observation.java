package org.pumpwright.host.grade.cause;

/**
 * One reading on the scale on which causes are told apart: about straight where it is small, logarithmic where it is large,
 * so that two faults at once add up. Thread-safe.
 *
 * @param value on that scale
 * @param standardUncertainty on that scale
 */
public record Observation(double value, double standardUncertainty) {
    public Observation {
        if (!Double.isFinite(value) || !Double.isFinite(standardUncertainty)) {
            throw new IllegalArgumentException("not an observation: " + value + " +- " + standardUncertainty);
        }
    }

    /** The logarithm of a ratio, not below that of a floor: a unit that gives nothing is not endlessly far away. */
    static Observation ratio(double ratio, double standardUncertainty, double floor) {
        double bounded = Math.max(ratio, floor);
        return new Observation(StrictMath.log(bounded), standardUncertainty / bounded);
    }

    /** The inverse hyperbolic sine of a figure over its scale: straight below the scale, logarithmic above. */
    static Observation figure(double value, double standardUncertainty, double scale) {
        double x = value / scale;
        double root = Math.sqrt(1 + x * x);
        double magnitude = StrictMath.log(Math.abs(x) + root);
        return new Observation(x < 0 ? -magnitude : magnitude, standardUncertainty / scale / root);
    }
}
