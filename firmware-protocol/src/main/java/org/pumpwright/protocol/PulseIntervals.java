package org.pumpwright.protocol;

/**
 * The times between neighbouring edges that ended in one {@link PulseWindow}; the one that began before it belongs to
 * it. Thread-safe.
 *
 * @param count how many there are, u16
 * @param sum of them in ticks, u32
 * @param squares sum of their squares in ticks squared, u64: a value above {@link Long#MAX_VALUE} is negative here
 * @param lagged sum of each interval times the one before it, for those whose predecessor is known, in ticks squared,
 *     u64 as the squares
 * @param least the shortest in ticks, u32, not above the longest; 0 without intervals
 * @param most the longest in ticks, u32; 0 without intervals
 * @param tooLong how many were above 1.6 times the reference, u16
 * @param tooShort how many were below half the reference, u16
 * @param reference mean interval of the window before in ticks, u32; 0 when that had none, and then none is too long or
 *     too short
 */
public record PulseIntervals(
        int count,
        long sum,
        long squares,
        long lagged,
        long least,
        long most,
        int tooLong,
        int tooShort,
        long reference) {
    /** No intervals, and none in the window before. */
    public static final PulseIntervals NONE = new PulseIntervals(0, 0, 0, 0, 0, 0, 0, 0, 0);

    /** @throws FieldOutOfRange when a field is outside its range */
    public PulseIntervals {
        Unsigned.checkU16(1, "pulse window intervals", count, "intervals");
        Unsigned.checkU32(2, "pulse window sum of intervals", sum, "ticks");
        Unsigned.checkU32(6, "pulse window longest interval", most, "ticks");
        FieldOutOfRange.check(5, "pulse window shortest interval", least, 0, most, "ticks, at most the longest");
        Unsigned.checkU16(7, "pulse window long intervals", tooLong, "intervals");
        Unsigned.checkU16(8, "pulse window short intervals", tooShort, "intervals");
        Unsigned.checkU32(9, "pulse window reference", reference, "ticks");
    }

    static PulseIntervals read(PayloadReader in) {
        in.group();
        return new PulseIntervals(
                in.u16(), in.u32(), in.u64(), in.u64(), in.u32(), in.u32(), in.u16(), in.u16(), in.u32());
    }

    void write(PayloadWriter out) {
        out.u16(count);
        out.u32(sum);
        out.u64(squares);
        out.u64(lagged);
        out.u32(least);
        out.u32(most);
        out.u16(tooLong);
        out.u16(tooShort);
        out.u32(reference);
    }
}
