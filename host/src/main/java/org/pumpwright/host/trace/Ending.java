package org.pumpwright.host.trace;

/**
 * How a run ended. Thread-safe.
 *
 * @param kind what happened
 * @param reason in plain words, with figures
 */
public record Ending(Kind kind, String reason) {
    /** What can end a run. */
    public enum Kind {
        /** Every point of the plan was visited. */
        COMPLETED,
        /** The unit went beyond a bound, with the stand well: too much current or pressure. This speaks of the unit. */
        UNIT_OUT_OF_BOUNDS,
        /** The stand was not fit to go on: supply too low, time over. */
        STAND_UNFIT,
        /** The board made itself safe for a reason of its own: emergency stop, guard, link lost, reset. */
        STOPPED_BY_BOARD,
        /** A person stopped it. */
        STOPPED_BY_PERSON,
        /** The stand was lost or fell silent. */
        STAND_LOST,
        /** The program itself failed. */
        PROGRAM_FAULT
    }

    public boolean completed() {
        return kind == Kind.COMPLETED;
    }
}
