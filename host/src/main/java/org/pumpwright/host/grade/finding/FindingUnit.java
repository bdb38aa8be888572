package org.pumpwright.host.grade.finding;

import java.util.Locale;

/** The units that figures of findings are kept in: SI throughout. Thread-safe. */
public enum FindingUnit {
    /** A share of one; people read it as percent. */
    SHARE,
    SECONDS,
    VOLTS,
    AMPS,
    OHMS,
    PASCALS,
    CELSIUS,
    HERTZ,
    M3_PER_SECOND,
    PULSES_PER_M3,
    /** A plain number, such as a ratio of two flows. */
    NUMBER,
    M3_PER_SECOND_PER_VOLT,
    AMPS_PER_PASCAL,
    M3_PER_SECOND_PER_PASCAL;

    /** The unit as it is written in files: small letters and underscores. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
