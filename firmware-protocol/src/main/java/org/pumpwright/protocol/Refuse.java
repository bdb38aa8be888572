package org.pumpwright.protocol;

/**
 * The board has not done what a host frame asked. Thread-safe.
 *
 * @param answered sequence of the host frame, u16
 * @param answeredType type code of the host frame, u8
 * @param reason why
 * @param detail what {@link RefuseReason} says of the reason; any value, since it only explains
 */
public record Refuse(int answered, int answeredType, RefuseReason reason, int detail) implements BoardMessage {
    /** @throws FieldOutOfRange when a field is outside its range */
    public Refuse {
        Unsigned.checkU16(1, "refuse sequence answered", answered, "u16");
        Unsigned.checkU8(2, "refuse type answered", answeredType, "u8");
    }

    @Override
    public MessageType type() {
        return MessageType.REFUSE;
    }

    static Refuse read(PayloadReader in) {
        int answered = in.u16();
        int answeredType = in.u8();
        RefuseReason reason = RefuseReason.read(in);
        int detail = in.i32();
        in.whole();
        return new Refuse(answered, answeredType, reason, detail);
    }

    void write(PayloadWriter out) {
        out.u16(answered);
        out.u8(answeredType);
        out.u8(reason.code());
        out.i32(detail);
    }
}
