package org.pumpwright.host.curve;

/**
 * The healthy range of one feature. Thread-safe.
 *
 * @param low lower limit
 * @param centre mean of the healthy units
 * @param high upper limit
 */
public record Band(double low, double centre, double high) {
    public Band {
        if (!(low <= centre && centre <= high)) {
            throw new IllegalArgumentException(
                    "band %s to %s does not hold its centre %s".formatted(low, high, centre));
        }
    }
}
