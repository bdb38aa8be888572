package org.pumpwright.host.trace;

/**
 * A stretch of a run that is no point of a sweep, in the board's time. Thread-safe.
 *
 * @param step the plan's step
 * @param kind what was done
 * @param fromNanos begin
 * @param toNanos end
 */
public record Stretch(String step, Kind kind, long fromNanos, long toNanos) {
    /** What was done in a stretch. */
    public enum Kind {
        /** Armed and driving nothing, before the first step. */
        REST,
        RAMP_UP,
        RAMP_DOWN,
        /** One duty held; of several times, each is a stretch of its own. */
        HOLD,
        /** Safe, while a person was waited for. */
        WAIT
    }

    public Stretch {
        if (fromNanos > toNanos) {
            throw new IllegalArgumentException(
                    "stretch of step %s: from %d to %d ns, not in this order".formatted(step, fromNanos, toNanos));
        }
    }

    /** How long it took, s. */
    public double seconds() {
        return (toNanos - fromNanos) / 1e9;
    }
}
