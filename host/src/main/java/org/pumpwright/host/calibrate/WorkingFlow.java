package org.pumpwright.host.calibrate;

import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Require;

/**
 * A flow at which the customer's planter runs, and how much of the volume goes through at it. Thread-safe.
 *
 * @param flow above 0
 * @param volumeShare weight against the other working flows, above 0; they need not add up to 1
 */
public record WorkingFlow(FlowRate flow, double volumeShare) {
    public WorkingFlow {
        Require.inRange("working flow", flow.m3PerSecond(), 1e-9, 1e3, "m3/s");
        Require.inRange("share of a working flow", volumeShare, 1e-6, 1e6, "");
    }

    /** One flow, or one of several with as much volume as the others. */
    public static WorkingFlow of(FlowRate flow) {
        return new WorkingFlow(flow, 1);
    }
}
