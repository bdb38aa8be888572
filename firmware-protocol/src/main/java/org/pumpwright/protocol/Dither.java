package org.pumpwright.protocol;

/**
 * Lays a square wave over the applied duty of one drive while that is above 0. Thread-safe.
 *
 * @param channel the drive, 0 or 1; a board may have fewer
 * @param amplitude up and down in 1/65536 of fully on, 0 to {@link #MOST_AMPLITUDE}; 0 is off
 * @param frequencyHz {@link #LOWEST_HZ} to {@link #HIGHEST_HZ}, also when it is off
 */
public record Dither(int channel, int amplitude, int frequencyHz) implements HostMessage {
    /** The most amplitude, an eighth of fully on. */
    public static final int MOST_AMPLITUDE = 8192;

    /** The lowest frequency. */
    public static final int LOWEST_HZ = 50;

    /** The highest frequency. */
    public static final int HIGHEST_HZ = 250;

    /** @throws FieldOutOfRange when a field is outside its range */
    public Dither {
        FieldOutOfRange.check(1, "dither channel", channel, 0, Drive.CHANNELS - 1, "number of the drive");
        FieldOutOfRange.check(2, "dither amplitude", amplitude, 0, MOST_AMPLITUDE, "1/65536 of fully on");
        FieldOutOfRange.check(3, "dither frequency", frequencyHz, LOWEST_HZ, HIGHEST_HZ, "Hz");
    }

    @Override
    public MessageType type() {
        return MessageType.DITHER;
    }

    static Dither read(PayloadReader in) {
        return new Dither(in.u8(), in.u16(), in.u16());
    }

    void write(PayloadWriter out) {
        out.u8(channel);
        out.u16(amplitude);
        out.u16(frequencyHz);
    }
}
