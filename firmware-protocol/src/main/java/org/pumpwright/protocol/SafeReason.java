package org.pumpwright.protocol;

/**
 * Why a board is in the safe state or locked; {@code spec/protocol.md} section 3 says when each is fulfilled.
 * Thread-safe.
 */
public enum SafeReason {
    /** No reason: the event is not one that made the stand safe. */
    NONE(0),
    /** The host sent make-safe. */
    HOST_ASKED(1),
    /** No sound host frame came for the link time-out. */
    LINK_LOST(2),
    /** The emergency-stop input is open. */
    EMERGENCY_STOP(3),
    /** The guard input is open. */
    GUARD_OPEN(4),
    /** The supply amps stayed above the board's limit for the limit's time. */
    OVER_CURRENT(5),
    /** The board was reset; the event's detail is the {@link ResetCause}. */
    RESET(6),
    /** The level input is open. */
    LEVEL_LOW(7),
    /** The unit's mechanical override is not returned. */
    OVERRIDE_IN(8),
    /** The contactor's feedback did not close in time (detail 0), or opened while armed (detail 1). */
    CONTACTOR(9),
    /** A drive was above 0 for longer than the run time of one armed stretch. */
    RUN_TIME(10),
    /** The pressure stayed above the board's limit for the limit's time. */
    OVER_PRESSURE(11),
    /** The pressure stayed above the dead-head limit with a drive above 0. */
    DEAD_HEAD(12),
    /** The supply amps stayed below the dry limit with drive 0 well above 0. */
    DRY_RUN(13),
    /** The volts at the pins stayed above the board's limit for the limit's time. */
    OVER_VOLTAGE(14),
    /** A self-test failed or the contactor stayed closed; only of a locked board. */
    HARDWARE(15);

    private static final SafeReason[] BY_CODE = values();

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
        FieldOutOfRange.check(1, "event reason", code, 0, HARDWARE.code, "code");
        return BY_CODE[code];
    }

    static SafeReason read(PayloadReader in) {
        in.group();
        return ofCode(in.u8());
    }
}
