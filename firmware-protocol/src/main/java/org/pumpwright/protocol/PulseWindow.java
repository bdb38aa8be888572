package org.pumpwright.protocol;

/**
 * What the board saw of one meter's edges in one period of {@link Windows}. Thread-safe.
 *
 * @param meter the meter, 0 or 1
 * @param begin board time of the begin in ticks, u32, rolls over
 * @param end board time of the end in ticks, u32, rolls over
 * @param edges edges in the window, u16
 * @param firstEdge board time of the first of them in ticks, u32; 0 without edges
 * @param lastEdge board time of the last of them in ticks, u32; 0 without edges
 * @param intervals the times between neighbouring edges
 */
public record PulseWindow(
        int meter, long begin, long end, int edges, long firstEdge, long lastEdge, PulseIntervals intervals)
        implements BoardMessage {
    /** @throws FieldOutOfRange when a field is outside its range */
    public PulseWindow {
        FieldOutOfRange.check(1, "pulse window meter", meter, 0, Sample.METERS - 1, "number of the meter");
        Unsigned.checkU32(2, "pulse window begin", begin, "ticks");
        Unsigned.checkU32(3, "pulse window end", end, "ticks");
        Unsigned.checkU16(4, "pulse window edges", edges, "edges");
        Unsigned.checkU32(5, "pulse window first edge", firstEdge, "ticks");
        Unsigned.checkU32(6, "pulse window last edge", lastEdge, "ticks");
    }

    @Override
    public MessageType type() {
        return MessageType.PULSE_WINDOW;
    }

    static PulseWindow read(PayloadReader in) {
        int meter = in.u8();
        long begin = in.u32();
        long end = in.u32();
        int edges = in.u16();
        long firstEdge = in.u32();
        long lastEdge = in.u32();
        PulseIntervals intervals = PulseIntervals.read(in);
        in.whole();
        return new PulseWindow(meter, begin, end, edges, firstEdge, lastEdge, intervals);
    }

    void write(PayloadWriter out) {
        out.u8(meter);
        out.u32(begin);
        out.u32(end);
        out.u16(edges);
        out.u32(firstEdge);
        out.u32(lastEdge);
        intervals.write(out);
    }
}
