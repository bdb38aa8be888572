package org.pumpwright.host.calibration;

import org.pumpwright.host.quantity.Require;

/**
 * Resistance and temperature of an NTC thermistor, {@code 1/T = a + b ln R + c (ln R)^3} with T in K and R in ohm (Steinhart
 * and Hart, Deep-Sea Research 15, 1968, 497). Thread-safe.
 *
 * @param a 1/K
 * @param b 1/K, above 0
 * @param c 1/K, 0 or more
 */
public record SteinhartHart(double a, double b, double c) {
    private static final int MOST_STEPS = 50;
    private static final double CLOSE = 1e-14;

    public SteinhartHart {
        Require.inRange("Steinhart-Hart a", a, -0.1, 0.1, "1/K");
        Require.inRange("Steinhart-Hart b", b, 1e-6, 0.1, "1/K");
        Require.inRange("Steinhart-Hart c", c, 0, 0.001, "1/K");
    }

    /** Temperature, K, of a resistance above 0. */
    public double kelvin(double ohms) {
        double ln = Math.log(ohms);
        return 1 / inverseKelvin(ln);
    }

    /**
     * Resistance, ohm, at a temperature above 0. The cubic rises all the way and Newton's steps from its straight part come to
     * its root from one side, so they cannot miss it.
     */
    public double ohms(double kelvin) {
        double wanted = 1 / kelvin;
        double ln = (wanted - a) / b;
        for (int i = 0; i < MOST_STEPS; i++) {
            double step = (inverseKelvin(ln) - wanted) / slope(ln);
            ln -= step;
            if (Math.abs(step) <= CLOSE * Math.abs(ln)) {
                break;
            }
        }
        return Math.exp(ln);
    }

    /** Change of the temperature with the logarithm of the resistance, K; below 0. */
    double kelvinPerLnOhms(double ohms) {
        double kelvin = kelvin(ohms);
        return -kelvin * kelvin * slope(Math.log(ohms));
    }

    private double inverseKelvin(double ln) {
        return a + ln * (b + c * ln * ln);
    }

    private double slope(double ln) {
        return b + 3 * c * ln * ln;
    }
}
