package org.pumpwright.protocol;

/**
 * Sets one drive. Thread-safe.
 *
 * @param channel the drive, 0 or 1; a board may have fewer
 * @param duty 0 to {@link #FULL_DUTY}, in 1/65536 of fully on
 * @param ramp most change per millisecond in 1/65536, 0 to 65535; 0 leaves it to the board's own limit
 */
public record Drive(int channel, long duty, int ramp) implements HostMessage {
    /** The duty of a drive that is fully on. */
    public static final long FULL_DUTY = 65536;

    /** The most drives a board can have. */
    public static final int CHANNELS = 2;

    /** @throws FieldOutOfRange when a field is outside its range */
    public Drive {
        FieldOutOfRange.check(1, "drive channel", channel, 0, CHANNELS - 1, "number of the drive");
        FieldOutOfRange.check(2, "drive duty", duty, 0, FULL_DUTY, "1/65536 of fully on");
        Unsigned.checkU16(3, "drive ramp", ramp, "1/65536 per ms");
    }

    @Override
    public MessageType type() {
        return MessageType.DRIVE;
    }

    static Drive read(PayloadReader in) {
        return new Drive(in.u8(), in.u32(), in.u16());
    }

    void write(PayloadWriter out) {
        out.u8(channel);
        out.u32(duty);
        out.u16(ramp);
    }
}
