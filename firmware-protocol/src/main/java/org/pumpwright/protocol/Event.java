package org.pumpwright.protocol;

/**
 * Something happened that a host must not miss. Thread-safe.
 *
 * @param number counts the events since reset from 1, u16; 0 follows 65535
 * @param time board time in ticks, u32, rolls over
 * @param kind what happened
 * @param reason started: {@link SafeReason#RESET}; armed: {@link SafeReason#NONE}; locked: {@link SafeReason#HARDWARE};
 *     made safe: one of the others
 * @param detail started: the bits of {@link ResetCause}; over-current, over-pressure, dead-head, dry run, over-voltage:
 *     the reading that fulfilled the rule, left-justified; contactor: 0 did not close, 1 opened; locked: the bits of
 *     {@link SelfTestPart} that failed; else 0. Any value is taken, since it only explains
 */
public record Event(int number, long time, EventKind kind, SafeReason reason, int detail) implements BoardMessage {
    private static final int REASON_FIELD = 4;

    /** @throws FieldOutOfRange when a field is outside its range, or the reason does not suit the kind */
    public Event {
        Unsigned.checkU16(1, "event number", number, "u16");
        Unsigned.checkU32(2, "event board time", time, "ticks");
        switch (kind) {
            case STARTED -> checkReason(reason, SafeReason.RESET, SafeReason.RESET, kind);
            case ARMED -> checkReason(reason, SafeReason.NONE, SafeReason.NONE, kind);
            case LOCKED -> checkReason(reason, SafeReason.HARDWARE, SafeReason.HARDWARE, kind);
            case MADE_SAFE -> {
                // A reset makes safe too, but is told by the event of the start.
                if (reason == SafeReason.RESET) {
                    throw refused(reason, SafeReason.HOST_ASKED, SafeReason.OVER_VOLTAGE, "code but 6", kind);
                }
                checkReason(reason, SafeReason.HOST_ASKED, SafeReason.OVER_VOLTAGE, kind);
            }
        }
    }

    @Override
    public MessageType type() {
        return MessageType.EVENT;
    }

    private static void checkReason(SafeReason reason, SafeReason lowest, SafeReason highest, EventKind kind) {
        if (reason.code() < lowest.code() || reason.code() > highest.code()) {
            throw refused(reason, lowest, highest, "code", kind);
        }
    }

    private static FieldOutOfRange refused(
            SafeReason reason, SafeReason lowest, SafeReason highest, String unit, EventKind kind) {
        return FieldOutOfRange.of(
                REASON_FIELD,
                "event reason",
                reason.code(),
                lowest.code(),
                highest.code(),
                unit + ", for an event of kind " + kind);
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
