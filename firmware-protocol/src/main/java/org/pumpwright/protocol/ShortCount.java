package org.pumpwright.protocol;

/**
 * How far a flow meter has counted, as a {@link ShortSample} tells it. Thread-safe.
 *
 * @param count the low half of the edges since reset, u16, rolls over; {@link RollOver#advanceLow} makes it long
 * @param lastEdge board time of the last edge counted, in ticks, u32, rolls over; 0 before the first edge
 */
public record ShortCount(int count, long lastEdge) {
    /** @throws FieldOutOfRange when a field is outside its range */
    public ShortCount {
        Unsigned.checkU16(1, "short meter edge count", count, "edges");
        Unsigned.checkU32(2, "short meter last edge", lastEdge, "ticks");
    }

    /** The low half of a whole count. */
    static ShortCount of(MeterCount whole) {
        return new ShortCount((int) (whole.count() & Unsigned.MAX_U16), whole.lastEdge());
    }

    static ShortCount read(PayloadReader in) {
        in.group();
        return new ShortCount(in.u16(), in.u32());
    }

    void write(PayloadWriter out) {
        out.u16(count);
        out.u32(lastEdge);
    }
}
