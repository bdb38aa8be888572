package org.pumpwright.host.calibration;

import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Require;

/**
 * A meter's K-factor at a flow. Thread-safe.
 *
 * @param flow 0 or more
 * @param k pulses per volume at that flow
 */
public record KPoint(FlowRate flow, KFactor k) {
    public KPoint {
        Require.inRange("flow of a K-factor", flow.m3PerSecond(), 0, 1e3, "m3/s");
    }

    /** Pulses per second at this flow. */
    double hertz() {
        return flow.m3PerSecond() * k.pulsesPerM3();
    }
}
