package org.pumpwright.protocol;

/** Whether the board lets anything move; {@code spec/protocol.md} section 3 has the ways between. Thread-safe. */
public enum BoardState {
    /** Every drive at 0, contactor let go. */
    SAFE(0),
    /** Drives as the host sets them, contactor pulled. */
    ARMED(1),
    /** Every drive at 0, contactor pulled, its feedback not closed yet. */
    PROVING(2),
    /** As safe; only a reset leaves it. */
    LOCKED(3);

    private static final BoardState[] BY_CODE = values();

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
        FieldOutOfRange.check(1, "board state", code, 0, LOCKED.code, "code");
        return BY_CODE[code];
    }

    static BoardState read(PayloadReader in) {
        in.group();
        return ofCode(in.u8());
    }
}
