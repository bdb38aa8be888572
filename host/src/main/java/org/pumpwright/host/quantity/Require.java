package org.pumpwright.host.quantity;

/** Range checks with one wording for every quantity: which value, what it is, what is allowed. Thread-safe. */
public final class Require {
    private Require() {}

    /**
     * Returns the value when it lies in the closed range.
     *
     * @throws IllegalArgumentException when it lies outside or is not a number
     */
    public static double inRange(String what, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    unit.isEmpty()
                            ? "%s is %s, allowed are %s to %s".formatted(what, value, least, most)
                            : "%s is %s %s, allowed are %s to %s %s".formatted(what, value, unit, least, most, unit));
        }
        return value;
    }

    /**
     * Returns the value when it is a finite number.
     *
     * @throws IllegalArgumentException when it is infinite or not a number
     */
    public static double finite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("%s is %s, it must be a finite number".formatted(what, value));
        }
        return value;
    }
}
