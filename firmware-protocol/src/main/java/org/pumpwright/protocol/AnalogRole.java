package org.pumpwright.protocol;

/** What an analogue channel of a board measures. Thread-safe. */
public enum AnalogRole {
    /** Nothing, or the channel is missing. */
    NONE(0),
    /** Volts at the unit's pins. */
    VOLTS(1),
    /** Amps in the supply lead. */
    SUPPLY_AMPS(2),
    /** Pressure. */
    PRESSURE(3),
    /** Temperature. */
    TEMPERATURE(4),
    /** Something else. */
    OTHER(5);

    private final int code;

    AnalogRole(int code) {
        this.code = code;
    }

    /** The number on the wire. */
    public int code() {
        return code;
    }

    /** Whether the board watches it, so that at most one channel can have it. */
    public boolean isWatched() {
        return this == VOLTS || this == SUPPLY_AMPS || this == PRESSURE;
    }

    /**
     * The one with this number on the wire.
     *
     * @throws FieldOutOfRange when there is none
     */
    public static AnalogRole ofCode(int code) {
        for (AnalogRole candidate : values()) {
            if (candidate.code == code) {
                return candidate;
            }
        }
        throw FieldOutOfRange.of(1, "role of an analogue channel", code, 0, OTHER.code, "code");
    }

    static AnalogRole read(PayloadReader in) {
        in.group();
        return ofCode(in.u8());
    }
}
