package org.pumpwright.host.calibrate;

import org.pumpwright.host.quantity.Require;

/**
 * How a run's pulses and its volume may not begin and end together. Thread-safe.
 *
 * @param start how runs begin and end
 * @param excessSeconds pulses are counted for this much longer than the volume was caught; the count is corrected for it. With a
 *     diverter it is found by {@link DiverterTrial}; with a valve it is the meter's over-run less its late start
 * @param switchHalfWidthSeconds what is left of that at each of the two switches: at most this, either way
 */
public record Timing(Start start, double excessSeconds, double switchHalfWidthSeconds) {
    public Timing {
        Require.inRange("excess of counting", excessSeconds, -10, 10, "s");
        Require.inRange("timing of one switch", switchHalfWidthSeconds, 0, 10, "s");
    }

    /** Share by which the count of a run of this length is too large. */
    public double excessShare(double seconds) {
        return excessSeconds / seconds;
    }
}
