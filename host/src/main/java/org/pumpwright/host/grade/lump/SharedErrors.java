package org.pumpwright.host.grade.lump;

import org.pumpwright.host.quantity.Require;

/**
 * Calibration errors that are the same at every point: they make the readings of a channel go together and no number of
 * points averages them out. Thread-safe.
 *
 * @param volts of the effective volts
 * @param amps of the motor amps
 * @param flow of the meter: the standard uncertainty of its K
 * @param pressure of the outlet pressure
 */
public record SharedErrors(Channel volts, Channel amps, Channel flow, Channel pressure) {
    /** No shared errors. */
    public static final SharedErrors NONE = new SharedErrors(Channel.NONE, Channel.NONE, Channel.NONE, Channel.NONE);

    /**
     * Standard uncertainties of one channel.
     *
     * @param gain relative, 0 to 0.3
     * @param zero in the channel's SI unit, 0 or more
     */
    public record Channel(double gain, double zero) {
        /** A channel without shared errors. */
        public static final Channel NONE = new Channel(0, 0);

        public Channel {
            Require.inRange("shared gain error", gain, 0, 0.3, "");
            Require.inRange("shared zero error", zero, 0, 1e9, "");
        }
    }
}
