package org.pumpwright.protocol;

/**
 * Makes one of the board's limits stricter until its next reset; {@link Limits} come back. Thread-safe.
 *
 * @param limit which one
 * @param value in the limit's range and unit
 */
public record Tighten(Limit limit, long value) implements HostMessage {
    /** @throws FieldOutOfRange when the value is outside the limit's range */
    public Tighten {
        limit.check(2, value);
    }

    @Override
    public MessageType type() {
        return MessageType.TIGHTEN;
    }

    static Tighten read(PayloadReader in) {
        Limit limit = Limit.read(in);
        long value = in.u32();
        in.whole();
        return new Tighten(limit, value);
    }

    void write(PayloadWriter out) {
        out.u8(limit.index());
        out.u32(value);
    }
}
