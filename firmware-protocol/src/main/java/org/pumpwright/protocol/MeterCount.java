package org.pumpwright.protocol;

/**
 * How far a flow meter has counted. Count and last edge belong together: between any two of these the flow is exact,
 * whatever was lost between them. Thread-safe.
 *
 * @param count edges, beginning at {@link #START_COUNT} after a reset, u32, rolls over
 * @param lastEdge board time of the last edge counted, in ticks, u32, rolls over; 0 before the first edge
 */
public record MeterCount(long count, long lastEdge) {
    /** What a meter's count is after a reset: near its end, so that every host meets the roll-over soon. */
    public static final long START_COUNT = 0xFFFF_FF00L;

    /** A meter that has not counted yet, or that the board does not have. */
    public static final MeterCount START = new MeterCount(START_COUNT, 0);

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
