package org.pumpwright.host.trace;

/** What an analogue channel of a stand reads. Thread-safe. */
public enum ChannelRole {
    /** The supply at the unit's own pins, V, read over its own pair of wires. */
    VOLTS_AT_PINS("volts at the pins", "V"),
    /** The supply lead's current, A, averaged over whole PWM periods. */
    SUPPLY_AMPS("supply amps", "A"),
    /** Gauge pressure before the nozzle, Pa. */
    OUTLET_PRESSURE("outlet pressure", "Pa"),
    /** Water temperature at the meter, K. */
    WATER_TEMPERATURE("water temperature", "K");

    private final String words;
    private final String siUnit;

    ChannelRole(String words, String siUnit) {
        this.words = words;
        this.siUnit = siUnit;
    }

    /** The role in plain words. */
    public String words() {
        return words;
    }

    public String siUnit() {
        return siUnit;
    }
}
