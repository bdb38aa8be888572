package org.pumpwright.host.plan;

import java.util.Locale;

/** What is read from a hold. Thread-safe. */
public enum Reading {
    /** Nothing: it only brings the unit somewhere. */
    NOTHING,
    /** Flow and current over a long time: drift, and whether the unit cuts out. */
    SOAK,
    /** Whether the unit starts each time, and how soon. */
    STARTS,
    /** Winding resistance by a short pulse below the breakaway duty. */
    STANDSTILL,
    /** Pulses of the meter where nothing flows: there must be none. */
    ZERO_FLOW,
    /** Pressure and current against a closed outlet. */
    DEAD_HEAD,
    /** Time from the start to the first steady flow. */
    PRIME,
    /** That nothing flows at zero command. */
    ZERO_COMMAND,
    /** Volts and amps under this load. */
    LOAD;

    /** The reading as it is written in files: small letters with dashes. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Reading ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
