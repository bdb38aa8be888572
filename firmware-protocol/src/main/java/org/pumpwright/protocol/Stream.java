package org.pumpwright.protocol;

/**
 * Asks for a {@link Sample} or {@link ShortSample} every so many milliseconds. Thread-safe.
 *
 * @param periodMs {@link #OFF}, or {@link #SHORTEST_PERIOD_MS} to {@link #LONGEST_PERIOD_MS}
 * @param kind which of both
 */
public record Stream(int periodMs, SampleKind kind) implements HostMessage {
    /** The period that stops the samples. */
    public static final int OFF = 0;

    /** The shortest period that can be asked for; what the line holds without loss is longer. */
    public static final int SHORTEST_PERIOD_MS = 1;

    /** The longest period. */
    public static final int LONGEST_PERIOD_MS = 1000;

    /** @throws FieldOutOfRange when the period is outside its range */
    public Stream {
        checkPeriod(periodMs);
    }

    /** Asks for whole samples. */
    public static Stream every(int periodMs) {
        return new Stream(periodMs, SampleKind.WHOLE);
    }

    /** Asks for no more samples. */
    public static Stream off() {
        return every(OFF);
    }

    @Override
    public MessageType type() {
        return MessageType.STREAM;
    }

    static Stream read(PayloadReader in) {
        int periodMs = in.u16();
        // Before the kind is read: of several fields out of range the first one is named.
        checkPeriod(periodMs);
        SampleKind kind = SampleKind.read(in);
        in.whole();
        return new Stream(periodMs, kind);
    }

    void write(PayloadWriter out) {
        out.u16(periodMs);
        out.u8(kind.code());
    }

    private static void checkPeriod(int periodMs) {
        FieldOutOfRange.check(1, "stream period", periodMs, OFF, LONGEST_PERIOD_MS, "ms, 0 for no samples");
    }
}
