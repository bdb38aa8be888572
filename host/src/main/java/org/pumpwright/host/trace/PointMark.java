package org.pumpwright.host.trace;

import org.pumpwright.host.quantity.Duty;

/**
 * One point of a sweep as it was carried out, in the board's time. Thread-safe.
 *
 * @param number from 1, in the order of the plan
 * @param leg which way the sweep was going
 * @param commanded what the plan asked for; the sample tells what the pin got
 * @param setNanos when the set point was sent
 * @param measureFromNanos when settling ended and measuring began
 * @param endNanos when measuring ended
 * @param settled false when the settling time ran out first
 * @param enoughPulses false when the measuring time ran out before the least number of pulses had come
 */
public record PointMark(
        int number,
        Leg leg,
        Duty commanded,
        long setNanos,
        long measureFromNanos,
        long endNanos,
        boolean settled,
        boolean enoughPulses) {
    public PointMark {
        if (setNanos > measureFromNanos || measureFromNanos > endNanos) {
            throw new IllegalArgumentException("point %d: set at %d, measured from %d to %d ns, not in this order"
                    .formatted(number, setNanos, measureFromNanos, endNanos));
        }
    }

    /** How long the point was measured, s. */
    public double measuredSeconds() {
        return (endNanos - measureFromNanos) / 1e9;
    }
}
