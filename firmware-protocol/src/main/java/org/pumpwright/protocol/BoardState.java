package org.pumpwright.protocol;

/** Whether the board lets anything move. Thread-safe. */
public enum BoardState {
    /** Every drive at 0, contactor open. */
    SAFE(0),
    /** Drives as the host sets them, contactor closed. */
    ARMED(1);

    private final int code;

    BoardState(int code) {
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
    public static BoardState ofCode(int code) {
        for (BoardState candidate : values()) {
            if (candidate.code == code) {
                return candidate;
            }
        }
        throw FieldOutOfRange.of(1, "board state", code, 0, 1, "code");
    }

    static BoardState read(PayloadReader in) {
        in.group();
        return ofCode(in.u8());
    }
}
