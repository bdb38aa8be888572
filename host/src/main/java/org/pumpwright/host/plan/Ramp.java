package org.pumpwright.host.plan;

import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Require;

/**
 * Moves the duty slowly up and, where asked for, down again: where a unit starts and stops. Thread-safe.
 *
 * @param name of the step
 * @param from where it begins, and ends when it comes back
 * @param to the other end, above {@code from}
 * @param percentPerSecond how fast
 * @param back whether it comes back
 */
public record Ramp(String name, Duty from, Duty to, double percentPerSecond, boolean back) implements Step {
    public Ramp {
        Require.inRange("ramp rate", percentPerSecond, 0.05, 100, "%/s");
        if (to.parts() <= from.parts()) {
            throw new IllegalArgumentException("ramp %s goes from %s to %s, it must go up".formatted(name, from, to));
        }
    }

    @Override
    public double leastSeconds() {
        return (to.percent() - from.percent()) / percentPerSecond * (back ? 2 : 1);
    }
}
