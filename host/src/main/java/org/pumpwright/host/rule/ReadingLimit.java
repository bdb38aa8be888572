package org.pumpwright.host.rule;

/**
 * The limits of a reading. Values are in the unit that readings are kept in. Thread-safe.
 *
 * @param reading which readings
 * @param unit the unit the limits are written in
 * @param low least value; minus infinity where there is none
 * @param high largest value; infinity where there is none
 * @param role whether it makes the verdict
 * @param outside what a value outside means, one plain sentence
 * @param basis where the numbers come from, in words
 * @param lowSource where the low limit stands; the rule itself where there is none
 * @param highSource where the high limit stands; the rule itself where there is none
 */
public record ReadingLimit(
        ReadingName reading,
        LimitUnit unit,
        double low,
        double high,
        Role role,
        String outside,
        String basis,
        Source lowSource,
        Source highSource) {
    public ReadingLimit {
        if (low == Double.NEGATIVE_INFINITY && high == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(
                    "the limit of reading '%s' has neither low nor high".formatted(reading.name()));
        }
        if (!(low <= high)) {
            throw new IllegalArgumentException(
                    "the limit of reading '%s' begins above its end".formatted(reading.name()));
        }
    }
}
