package org.pumpwright.host.signal;

/** What a pulse train can show of its meter and of the flow through it. Thread-safe. */
public enum PulseFault {
    HEALTHY("healthy"),
    MISSING_PULSES("pulses missing at random"),
    DOUBLE_PULSES("double pulses"),
    BLADE_LOST("one blade or magnet lost"),
    AIR_SLUGS("air slugs"),
    SURGE("surging flow"),
    WORN_BEARING("worn bearing"),
    INTERFERENCE("interference from the pump drive");

    private final String words;

    PulseFault(String words) {
        this.words = words;
    }

    /** For people. */
    public String words() {
        return words;
    }
}
