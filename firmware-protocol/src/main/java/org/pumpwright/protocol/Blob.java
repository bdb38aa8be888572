package org.pumpwright.protocol;

/** Bytes that a board keeps for its host. Thread-safe. */
public enum Blob {
    /** Who the board is: its own unique id is in the first eight bytes. */
    IDENTITY(0),
    /** How its channels are calibrated; the board does not look inside. */
    CALIBRATION(1);

    /** The most bytes a blob can have. */
    public static final int MAX_LENGTH = 256;

    /** The place of the last byte a blob can have. */
    static final int MAX_OFFSET = MAX_LENGTH - 1;

    private final int code;

    Blob(int code) {
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
    public static Blob ofCode(int code) {
        FieldOutOfRange.check(1, "blob", code, IDENTITY.code, CALIBRATION.code, "number of the blob");
        return code == IDENTITY.code ? IDENTITY : CALIBRATION;
    }

    static Blob read(PayloadReader in) {
        in.group();
        return ofCode(in.u8());
    }
}
