package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.ZERO_CELSIUS_KELVIN;

/**
 * A thermal protector in the winding that resets by itself. Thread-safe.
 *
 * @param opensKelvin winding temperature at which it opens; infinite where none is fitted
 * @param closesKelvin winding temperature at which it closes again
 */
public record ProtectorParameters(double opensKelvin, double closesKelvin) {

    public ProtectorParameters {
        Range.check("protector opening", opensKelvin, 250, Double.POSITIVE_INFINITY, "K");
        Range.check("protector closing", closesKelvin, 0, opensKelvin, "K");
    }

    /** Opens at 115 °C and closes at 88 °C; assumed values. */
    static ProtectorParameters healthy() {
        return new ProtectorParameters(ZERO_CELSIUS_KELVIN + 115, ZERO_CELSIUS_KELVIN + 88);
    }

    /** Never opens. */
    public static ProtectorParameters notFitted() {
        return new ProtectorParameters(Double.POSITIVE_INFINITY, 0);
    }
}
