package org.pumpwright.host.claim.statistics;

/**
 * From here to there. Thread-safe.
 *
 * @param low lower end
 * @param high upper end, not below the lower one; may be infinite
 */
public record Interval(double low, double high) {
    /** The level of every interval of this package. */
    public static final double LEVEL = 0.95;

    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException(
                    "interval from %s to %s: the lower end must come first".formatted(low, high));
        }
    }

    /** Whether the value lies in it, ends included. */
    public boolean holds(double value) {
        return low <= value && value <= high;
    }
}
