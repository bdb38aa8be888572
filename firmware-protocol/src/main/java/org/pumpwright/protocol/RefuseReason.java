package org.pumpwright.protocol;

/** Why a board did not do what it was asked; each says what the detail of {@link Refuse} is. Thread-safe. */
public enum RefuseReason {
    /** The detail is the type. */
    UNKNOWN_TYPE(1),
    /** The detail is the payload's length in bytes. */
    WRONG_LENGTH(2),
    /** The detail is the number of the field, from 1. */
    OUT_OF_RANGE(3),
    /** Only an armed board does this. The detail is the code of its {@link BoardState}. */
    NOT_ARMED(4),
    /** The boot id is of another board or of an earlier start. The detail is 0. */
    WRONG_BOOT_ID(5),
    /** One of the inputs that arming needs is open. The detail is the bits of {@link Inputs}. */
    INPUT_OPEN(6),
    /** The value is less strict than the present one. The detail is the present value. */
    WOULD_WIDEN(7),
    /** The board is locked. The detail is the failed bits, see {@link SelfTestPart#failedIn}. */
    LOCKED(8),
    /** An earlier write is not done. The detail is 0. */
    BUSY(9),
    /** Only a safe or locked board does this. The detail is the code of its {@link BoardState}. */
    NOT_SAFE(10),
    /** The check did not fit the bytes written. The detail is 0. */
    NOT_STORED(11),
    /** The contactor's feedback is closed before it was pulled. The detail is the bits of {@link Inputs}. */
    CONTACTOR_CLOSED(12);

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
        throw FieldOutOfRange.of(1, "refuse reason", code, 1, 12, "code");
    }

    static RefuseReason read(PayloadReader in) {
        in.group();
        return ofCode(in.u8());
    }
}
