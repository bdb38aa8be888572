package org.pumpwright.protocol;

/**
 * How many of each a board has. Thread-safe.
 *
 * @param meters flow meters, 0 to 2
 * @param drives drives, 0 to 2
 * @param analogs analogue channels, 0 to 4
 */
public record ChannelCounts(int meters, int drives, int analogs) {
    /** @throws FieldOutOfRange when a count is outside its range */
    public ChannelCounts {
        FieldOutOfRange.check(1, "meters", meters, 0, Sample.METERS, "channels");
        FieldOutOfRange.check(2, "drives", drives, 0, Sample.DRIVES, "channels");
        FieldOutOfRange.check(3, "analogue channels", analogs, 0, Sample.ANALOGS, "channels");
    }

    static ChannelCounts read(PayloadReader in) {
        in.group();
        return new ChannelCounts(in.u8(), in.u8(), in.u8());
    }

    void write(PayloadWriter out) {
        out.u8(meters);
        out.u8(drives);
        out.u8(analogs);
    }
}
