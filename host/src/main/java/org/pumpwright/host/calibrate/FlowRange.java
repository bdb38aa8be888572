package org.pumpwright.host.calibrate;

import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Require;

/**
 * From one flow to another, both included. Thread-safe.
 *
 * @param least 0 or more
 * @param most not below the least
 */
public record FlowRange(FlowRate least, FlowRate most) {
    public FlowRange {
        Require.inRange("lowest flow of a range", least.m3PerSecond(), 0, 1e3, "m3/s");
        Require.inRange("highest flow of a range", most.m3PerSecond(), least.m3PerSecond(), 1e3, "m3/s");
    }

    /**
     * Whether a flow lies within.
     *
     * @param slackShare it may be outside by this share of the end
     */
    boolean holds(FlowRate flow, double slackShare) {
        return flow.m3PerSecond() >= least.m3PerSecond() * (1 - slackShare)
                && flow.m3PerSecond() <= most.m3PerSecond() * (1 + slackShare);
    }
}
