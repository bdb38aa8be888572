package org.pumpwright.protocol;

/**
 * The version of a board's firmware. Thread-safe.
 *
 * @param major u8
 * @param minor u8
 * @param patch u8
 */
public record FirmwareVersion(int major, int minor, int patch) {
    /** @throws FieldOutOfRange when a part is no u8 */
    public FirmwareVersion {
        Unsigned.checkU8(1, "firmware major", major, "u8");
        Unsigned.checkU8(2, "firmware minor", minor, "u8");
        Unsigned.checkU8(3, "firmware patch", patch, "u8");
    }

    /** The three numbers with dots, such as {@code 0.1.0}. */
    @Override
    public String toString() {
        return major + "." + minor + "." + patch;
    }

    static FirmwareVersion read(PayloadReader in) {
        in.group();
        return new FirmwareVersion(in.u8(), in.u8(), in.u8());
    }

    void write(PayloadWriter out) {
        out.u8(major);
        out.u8(minor);
        out.u8(patch);
    }
}
