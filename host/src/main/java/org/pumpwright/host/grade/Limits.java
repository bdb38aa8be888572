package org.pumpwright.host.grade;

import java.util.OptionalDouble;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.rule.Source;

/**
 * What a feature is held against, in the feature's unit. Thread-safe.
 *
 * @param set the name of the set of limits they belong to, e.g. {@code healthy range of curve demo-pump v1}
 * @param low least value; minus infinity where that side is open
 * @param centre mean of the healthy units; empty where the limits come from elsewhere
 * @param high largest value; infinity where that side is open
 * @param source where the numbers stand
 * @param meaning what a value outside means, one plain sentence; may be empty
 */
public record Limits(String set, double low, OptionalDouble centre, double high, Source source, String meaning) {
    public Limits {
        if (!(low <= high)) {
            throw new IllegalArgumentException("limits of %s: %s lies above %s".formatted(set, low, high));
        }
    }

    /** The healthy range of a curve. */
    public static Limits of(String set, Band band, Source source) {
        return new Limits(set, band.low(), OptionalDouble.of(band.centre()), band.high(), source, "");
    }

    public boolean hasLow() {
        return low != Double.NEGATIVE_INFINITY;
    }

    public boolean hasHigh() {
        return high != Double.POSITIVE_INFINITY;
    }
}
