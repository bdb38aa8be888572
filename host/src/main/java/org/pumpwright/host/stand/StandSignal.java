package org.pumpwright.host.stand;

import org.pumpwright.host.trace.Sample;

/** What a stand sends on its own. Thread-safe. */
public sealed interface StandSignal permits StandSignal.Measured, StandSignal.MadeSafe {
    /** A window of measurements. */
    record Measured(Sample sample) implements StandSignal {}

    /**
     * The board went from armed to safe.
     *
     * @param cause why
     * @param boardNanos when, by the board's time, ns
     * @param words the reason in plain words, with figures
     */
    record MadeSafe(Cause cause, long boardNanos, String words) implements StandSignal {}

    /** Why a board made safe. */
    enum Cause {
        /** The host asked for it. */
        HOST,
        /** The board heard no sound frame from the host for its link time-out. */
        LINK_LOST,
        EMERGENCY_STOP,
        GUARD_OPEN,
        /** The tank's level fell low. */
        LEVEL_LOW,
        /** The unit's mechanical override was pushed in. */
        OVERRIDE_IN,
        /** The contactor did not close, or opened by itself. */
        CONTACTOR,
        OVER_CURRENT,
        RUN_TIME,
        OVER_PRESSURE,
        DEAD_HEAD,
        DRY_RUN,
        OVER_VOLTAGE,
        /** The board found a fault in itself. */
        HARDWARE,
        /** The board is safe, and what it said of the reason was lost on the line. */
        UNKNOWN
    }
}
