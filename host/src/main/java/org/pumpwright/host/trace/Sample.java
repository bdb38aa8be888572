package org.pumpwright.host.trace;

import java.util.List;
import org.pumpwright.host.quantity.Duty;

/**
 * What the board measured in one window, as it came: counts and readings, no calibration. Roll-over is already taken
 * out, so times and counts only grow within one boot of the board. Thread-safe.
 *
 * @param boardNanos the board's time at the end of the window, ns
 * @param meters one entry a meter
 * @param analogs one entry an analogue channel of the board, by its number
 * @param applied the duty each drive's pin gets, by its number
 * @param armed whether the board was armed
 * @param emergencyStopClosed whether the emergency-stop loop was closed
 * @param guardClosed whether the guard was closed
 */
public record Sample(
        long boardNanos,
        List<MeterCount> meters,
        List<AnalogReading> analogs,
        List<Duty> applied,
        boolean armed,
        boolean emergencyStopClosed,
        boolean guardClosed) {
    public Sample {
        meters = List.copyOf(meters);
        analogs = List.copyOf(analogs);
        applied = List.copyOf(applied);
    }

    /**
     * Edges counted since the board started, and the board's time of the last of them, ns. Between two samples the flow
     * is exact, whatever was lost between them.
     */
    public record MeterCount(long edges, long lastEdgeNanos) {}

    /**
     * Left-justified readings over the window: 65536 would be the converter's reference. A board that was asked for short
     * samples tells the mean only; least and most are the mean then.
     */
    public record AnalogReading(int mean, int min, int max) {}

    /** The board's time at the end of the window, s. */
    public double boardSeconds() {
        return boardNanos / 1e9;
    }
}
