package org.pumpwright.host.rule;

import org.pumpwright.host.quantity.Require;

/**
 * A standard uncertainty that one run does not show by itself, such as that between days. Thread-safe.
 *
 * @param name in plain words
 * @param quantity what it belongs to
 * @param share as a share of the value
 * @param basis where the number comes from, in words
 * @param source where it stands
 */
public record KnownDoubt(String name, Quantity quantity, double share, String basis, Source source) {
    public KnownDoubt {
        Require.inRange(name, share, 0, 1, "of the value");
    }

    /** What such an uncertainty belongs to. */
    public enum Quantity {
        FLOW,
        MOTOR_AMPS
    }
}
