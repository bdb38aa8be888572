package org.pumpwright.host.plan;

import java.util.List;
import org.pumpwright.host.quantity.Require;

/**
 * Visits points one after the other; each is settled, then measured. Thread-safe.
 *
 * @param name of the step
 * @param points in the order in which they are visited
 * @param rampSeconds time from 0 to fully on when the set point changes
 * @param settle when a point counts as settled
 * @param measure how long a settled point is measured
 */
public record Sweep(String name, List<PlanPoint> points, double rampSeconds, Settle settle, Measure measure)
        implements Step {
    public Sweep {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("sweep %s has no points".formatted(name));
        }
        Require.inRange("ramp", rampSeconds, 0.01, 60, "s");
    }

    @Override
    public double leastSeconds() {
        return points.size() * leastSecondsEach();
    }

    /** The least time that one point takes, s. */
    public double leastSecondsEach() {
        return rampSeconds + settle.leastSeconds() + measure.leastSeconds();
    }
}
