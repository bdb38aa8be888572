package org.pumpwright.protocol;

/**
 * How far a flow meter has counted. Count and last edge belong together: between any two of these the flow is exact,
 * whatever was lost between them. Thread-safe.
 *
 * @param count edges since reset, u32, rolls over
 * @param lastEdge board time of the last edge counted, in ticks, u32, rolls over; 0 before the first edge
 */
public record MeterCount(long count, long lastEdge) {
    /** A meter that has not counted yet, or that the board does not have. */
    public static final MeterCount NONE = new MeterCount(0, 0);

    /** @throws FieldOutOfRange when a field is no u32 */
    public MeterCount {
        Unsigned.checkU32(1, "meter edge count", count, "edges");
        Unsigned.checkU32(2, "meter last edge", lastEdge, "ticks");
    }

    static MeterCount read(PayloadReader in) {
        in.group();
        return new MeterCount(in.u32(), in.u32());
    }

    void write(PayloadWriter out) {
        out.u32(count);
        out.u32(lastEdge);
    }
}
