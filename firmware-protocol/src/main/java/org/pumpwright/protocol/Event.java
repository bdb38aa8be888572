package org.pumpwright.protocol;

/**
 * Something happened that a host must not miss. Thread-safe.
 *
 * @param number counts the events since reset, u16, rolls over
 * @param time board time in ticks, u32, rolls over
 * @param kind what happened
 * @param reason why the stand is safe; {@link SafeReason#NONE} exactly when it became armed
 * @param detail started: the bits of {@link ResetCause}; over-current: the highest mean reading, left-justified; else
 *     0. Any value is taken, since it only explains
 */
public record Event(int number, long time, EventKind kind, SafeReason reason, int detail) implements BoardMessage {
    private static final int REASON_FIELD = 4;

    /** @throws FieldOutOfRange when a field is outside its range, or the reason does not suit the kind */
    public Event {
        Unsigned.checkU16(1, "event number", number, "u16");
        Unsigned.checkU32(2, "event board time", time, "ticks");
        boolean needsReason = kind != EventKind.ARMED;
        FieldOutOfRange.check(
                REASON_FIELD,
                "event reason",
                reason.code(),
                needsReason ? SafeReason.HOST_ASKED.code() : SafeReason.NONE.code(),
                needsReason ? SafeReason.RESET.code() : SafeReason.NONE.code(),
                "code, for an event of kind " + kind);
    }

    @Override
    public MessageType type() {
        return MessageType.EVENT;
    }

    static Event read(PayloadReader in) {
        int number = in.u16();
        long time = in.u32();
        EventKind kind = EventKind.read(in);
        SafeReason reason = SafeReason.read(in);
        int detail = in.i32();
        in.whole();
        return new Event(number, time, kind, reason, detail);
    }

    void write(PayloadWriter out) {
        out.u16(number);
        out.u32(time);
        out.u8(kind.code());
        out.u8(reason.code());
        out.i32(detail);
    }
}
