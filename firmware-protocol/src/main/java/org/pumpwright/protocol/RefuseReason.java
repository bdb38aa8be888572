package org.pumpwright.protocol;

/** Why a board did not do what it was asked; each says what the detail of {@link Refuse} is. Thread-safe. */
public enum RefuseReason {
    /** The detail is the type. */
    UNKNOWN_TYPE(1),
    /** The detail is the payload's length in bytes. */
    WRONG_LENGTH(2),
    /** The detail is the number of the field, from 1. */
    OUT_OF_RANGE(3),
    /** The drive can't be set in the safe state. The detail is 0. */
    NOT_ARMED(4),
    /** The boot id is of another board or of an earlier start. The detail is 0. */
    WRONG_BOOT_ID(5),
    /** Emergency stop or guard is open. The detail is the bits of {@link Inputs}. */
    INPUT_OPEN(6);

    private final int code;

    RefuseReason(int code) {
        this.code = code;
    }

    /** The number on the wire. */
    public int code() {
        return code;
    }

    /**
     * The one with this number on the wire.
     *
     * @throws FieldOutOfRange when there is none
     */
    public static RefuseReason ofCode(int code) {
        for (RefuseReason candidate : values()) {
            if (candidate.code == code) {
                return candidate;
            }
        }
        throw FieldOutOfRange.of(1, "refuse reason", code, 1, 6, "code");
    }

    static RefuseReason read(PayloadReader in) {
        in.group();
        return ofCode(in.u8());
    }
}
