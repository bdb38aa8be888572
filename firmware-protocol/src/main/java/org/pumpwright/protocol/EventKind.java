package org.pumpwright.protocol;

/** What happened on the board. Thread-safe. */
public enum EventKind {
    /** The board started, in the safe state. */
    STARTED(1),
    /** The state became armed. */
    ARMED(2),
    /** The state became safe. */
    MADE_SAFE(3),
    /** The state became locked. */
    LOCKED(4);

    private final int code;

    EventKind(int code) {
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
    public static EventKind ofCode(int code) {
        for (EventKind candidate : values()) {
            if (candidate.code == code) {
                return candidate;
            }
        }
        throw FieldOutOfRange.of(1, "event kind", code, 1, 4, "code");
    }

    static EventKind read(PayloadReader in) {
        in.group();
        return ofCode(in.u8());
    }
}
