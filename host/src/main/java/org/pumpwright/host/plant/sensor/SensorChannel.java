package org.pumpwright.host.plant.sensor;

import java.util.Locale;

/**
 * A sensor of the stand, with the readings at which an open and a shorted line end up. Full scales are assumed: 20 V,
 * 40 A, 0.7 MPa (about 100 psi); the thermometer is a resistor that falls with temperature. Thread-safe.
 */
public enum SensorChannel {
    METER(0, 0),
    VOLTS(0, 20),
    AMPS(0, 40),
    PRESSURE(0, 0.7e6),
    TEMPERATURE(233.15, 398.15);

    private final double open;
    private final double shorted;

    SensorChannel(double open, double shorted) {
        this.open = open;
        this.shorted = shorted;
    }

    /** Reading with the line open, in the channel's SI unit. */
    double open() {
        return open;
    }

    /** Reading with the line shorted. */
    double shorted() {
        return shorted;
    }

    /** Width of its readings. */
    double span() {
        return shorted - open;
    }

    /** Its word on a command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
