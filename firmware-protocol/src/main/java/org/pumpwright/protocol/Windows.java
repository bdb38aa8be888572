package org.pumpwright.protocol;

/**
 * Asks for a {@link PulseWindow} of each meter at the end of every period. Thread-safe.
 *
 * @param periodMs {@link #OFF}, or {@link #SHORTEST_PERIOD_MS} to {@link #LONGEST_PERIOD_MS}
 */
public record Windows(int periodMs) implements HostMessage {
    /** The period that stops the windows. */
    public static final int OFF = 0;

    /** The shortest period. */
    public static final int SHORTEST_PERIOD_MS = 100;

    /** The longest period. */
    public static final int LONGEST_PERIOD_MS = 10_000;

    /** @throws FieldOutOfRange when the period is outside its range */
    public Windows {
        if (periodMs != OFF) {
            FieldOutOfRange.check(
                    1, "windows period", periodMs, SHORTEST_PERIOD_MS, LONGEST_PERIOD_MS, "ms, or 0 for no windows");
        }
    }

    @Override
    public MessageType type() {
        return MessageType.WINDOWS;
    }

    static Windows read(PayloadReader in) {
        return new Windows(in.u16());
    }

    void write(PayloadWriter out) {
        out.u16(periodMs);
    }
}
