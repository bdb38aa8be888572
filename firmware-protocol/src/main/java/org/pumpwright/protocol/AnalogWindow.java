package org.pumpwright.protocol;

/**
 * What one analogue channel read over a window, left-justified: 65536 would be the converter's reference. Thread-safe.
 *
 * @param mean the mean reading, u16
 * @param min the lowest reading, u16, not above the mean
 * @param max the highest reading, u16, not below the mean
 */
public record AnalogWindow(int mean, int min, int max) {
    /** A channel that the board does not have. */
    public static final AnalogWindow NONE = new AnalogWindow(0, 0, 0);

    /** One above the highest reading that could be: the converter's reference. */
    public static final int REFERENCE = 65536;

    /** @throws FieldOutOfRange when a field is no u16, or the mean does not lie between lowest and highest */
    public AnalogWindow {
        Unsigned.checkU16(1, "analogue mean", mean, "1/65536 of the reference");
        FieldOutOfRange.check(2, "analogue min", min, 0, mean, "1/65536 of the reference, at most the mean");
        FieldOutOfRange.check(
                3, "analogue max", max, mean, Unsigned.MAX_U16, "1/65536 of the reference, at least the mean");
    }

    static AnalogWindow read(PayloadReader in) {
        in.group();
        return new AnalogWindow(in.u16(), in.u16(), in.u16());
    }

    void write(PayloadWriter out) {
        out.u16(mean);
        out.u16(min);
        out.u16(max);
    }
}
