package org.pumpwright.protocol;

/**
 * What the identity of a board of another protocol version tells: the part that keeps its place in every version.
 * Thread-safe.
 *
 * @param version the protocol version the board speaks
 * @param uniqueId the board's own number
 * @param firmwareMajor u8
 * @param firmwareMinor u8
 */
public record ForeignBoard(int version, UniqueId uniqueId, int firmwareMajor, int firmwareMinor) {
    /** How many bytes of an identity's payload keep their place. */
    static final int LENGTH = UniqueId.LENGTH + 2;

    /** @throws FieldOutOfRange when a number is no u8 */
    public ForeignBoard {
        Unsigned.checkU8(1, "frame version", version, "u8");
        Unsigned.checkU8(2, "firmware major", firmwareMajor, "u8");
        Unsigned.checkU8(3, "firmware minor", firmwareMinor, "u8");
    }

    static ForeignBoard read(int version, PayloadReader in) {
        return new ForeignBoard(version, UniqueId.read(in), in.u8(), in.u8());
    }
}
