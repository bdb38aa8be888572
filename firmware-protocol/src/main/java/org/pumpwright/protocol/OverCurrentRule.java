package org.pumpwright.protocol;

/**
 * When the board itself makes safe because of a current. Thread-safe.
 *
 * @param channel the analogue channel watched, 0 to 3, or {@link #NO_CHANNEL}
 * @param limit left-justified reading that must not be exceeded, u16
 * @param timeMs how long it may be exceeded, in ms, u16
 */
public record OverCurrentRule(int channel, int limit, int timeMs) {
    /** The channel of a board that watches no current. */
    public static final int NO_CHANNEL = 0xFF;

    /** The rule of a board that watches no current. */
    public static final OverCurrentRule NONE = new OverCurrentRule(NO_CHANNEL, 0, 0);

    /** @throws FieldOutOfRange when a field is outside its range */
    public OverCurrentRule {
        if (channel != NO_CHANNEL) {
            FieldOutOfRange.check(
                    1, "current channel", channel, 0, Sample.ANALOGS - 1, "analogue channel, or 255 for none");
        }
        Unsigned.checkU16(2, "over-current limit", limit, "1/65536 of the reference");
        Unsigned.checkU16(3, "over-current time", timeMs, "ms");
    }

    /** Whether the board watches a current. */
    public boolean isOn() {
        return channel != NO_CHANNEL;
    }

    static OverCurrentRule read(PayloadReader in) {
        in.group();
        return new OverCurrentRule(in.u8(), in.u16(), in.u16());
    }

    void write(PayloadWriter out) {
        out.u8(channel);
        out.u16(limit);
        out.u16(timeMs);
    }
}
