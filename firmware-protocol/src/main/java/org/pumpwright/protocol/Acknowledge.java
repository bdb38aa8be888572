package org.pumpwright.protocol;

/**
 * The board has done what a host frame asked. Thread-safe.
 *
 * @param answered sequence of the host frame, u16
 * @param answeredType type code of the host frame, u8
 */
public record Acknowledge(int answered, int answeredType) implements BoardMessage {
    /** @throws FieldOutOfRange when a field is outside its range */
    public Acknowledge {
        Unsigned.checkU16(1, "acknowledge sequence answered", answered, "u16");
        Unsigned.checkU8(2, "acknowledge type answered", answeredType, "u8");
    }

    @Override
    public MessageType type() {
        return MessageType.ACKNOWLEDGE;
    }

    static Acknowledge read(PayloadReader in) {
        return new Acknowledge(in.u16(), in.u8());
    }

    void write(PayloadWriter out) {
        out.u16(answered);
        out.u8(answeredType);
    }
}
