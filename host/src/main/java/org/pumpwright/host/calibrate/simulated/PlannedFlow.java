package org.pumpwright.host.calibrate.simulated;

import org.pumpwright.host.quantity.FlowRate;

/**
 * A flow of a made-up test. Thread-safe.
 *
 * @param set flow
 * @param seconds of a run
 * @param scatterShare standard deviation of the meter's K from run to run, as a share
 */
public record PlannedFlow(FlowRate set, double seconds, double scatterShare) {}
