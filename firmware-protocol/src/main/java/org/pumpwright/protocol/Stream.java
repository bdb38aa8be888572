package org.pumpwright.protocol;

/**
 * Asks for a {@link Sample} every so many milliseconds. Thread-safe.
 *
 * @param periodMs {@link #OFF}, or {@link #SHORTEST_PERIOD_MS} to {@link #LONGEST_PERIOD_MS}
 */
public record Stream(int periodMs) implements HostMessage {
    /** The period that stops the samples. */
    public static final int OFF = 0;

    /** The shortest period a board must be able to hold. */
    public static final int SHORTEST_PERIOD_MS = 2;

    /** The longest period. */
    public static final int LONGEST_PERIOD_MS = 1000;

    /** @throws FieldOutOfRange when the period is outside its range */
    public Stream {
        if (periodMs != OFF) {
            FieldOutOfRange.check(
                    1, "stream period", periodMs, SHORTEST_PERIOD_MS, LONGEST_PERIOD_MS, "ms, or 0 for no samples");
        }
    }

    @Override
    public MessageType type() {
        return MessageType.STREAM;
    }

    static Stream read(PayloadReader in) {
        return new Stream(in.u16());
    }

    void write(PayloadWriter out) {
        out.u16(periodMs);
    }
}
