package org.pumpwright.host.trace;

import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Require;

/**
 * One pulse meter of a stand and its calibration. Thread-safe.
 *
 * @param index the meter's number on the board, 0 or 1
 * @param k pulses per volume
 * @param relativeUncertainty standard uncertainty of K as a share of it
 * @param least the lowest flow at which K holds
 * @param certificate number of the calibration certificate, or words that say there is none
 */
public record MeterChannel(int index, KFactor k, double relativeUncertainty, FlowRate least, String certificate) {
    public MeterChannel {
        Require.inRange("meter", index, 0, 1, "");
        Require.inRange("relative uncertainty of K", relativeUncertainty, 0, 1, "");
    }
}
