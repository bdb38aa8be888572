package org.pumpwright.protocol;

/** Why a board is in the safe state. Thread-safe. */
public enum SafeReason {
    /** No reason: the event is not one that made the stand safe. */
    NONE(0),
    /** The host sent make-safe. */
    HOST_ASKED(1),
    /** No sound host frame came for the link time-out. */
    LINK_LOST(2),
    /** The emergency-stop loop is open. */
    EMERGENCY_STOP(3),
    /** The guard is open. */
    GUARD_OPEN(4),
    /** The current stayed above the board's limit for the board's time. */
    OVER_CURRENT(5),
    /** The board was reset; the event's detail is the {@link ResetCause}. */
    RESET(6);

    private final int code;

    SafeReason(int code) {
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
    public static SafeReason ofCode(int code) {
        for (SafeReason candidate : values()) {
            if (candidate.code == code) {
                return candidate;
            }
        }
        throw FieldOutOfRange.of(1, "event reason", code, 0, 6, "code");
    }

    static SafeReason read(PayloadReader in) {
        in.group();
        return ofCode(in.u8());
    }
}
