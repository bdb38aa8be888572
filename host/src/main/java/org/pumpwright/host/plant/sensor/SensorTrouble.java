package org.pumpwright.host.plant.sensor;

import java.util.Locale;

/** In which way a sensor is broken. A meter's trouble is in its pulses. Thread-safe. */
public enum SensorTrouble {
    /** Keeps its first reading; a meter's rotor is jammed. */
    STUCK,
    /** The line is open; a meter gives nothing. */
    OPEN,
    /** The line is shorted; a meter gives nothing. */
    SHORT,
    /** Swings at random by 5 % of its span; a meter doubles one pulse in ten. */
    NOISY,
    /** Reads half of what there is, the thermometer half of the Celsius; a meter loses every second pulse. */
    WRONG_SCALE;

    /** Its word on a command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
