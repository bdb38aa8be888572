package org.pumpwright.host.calibrate.fluid;

import org.pumpwright.host.quantity.Require;

/**
 * The lift of air on a liquid that is weighed on a scale set with steel weights. Thread-safe.
 */
public final class Buoyancy {
    /** Density of the weights that a scale is set with, by agreement 8000 kg/m3 (OIML D 28). */
    public static final double WEIGHTS_KG_PER_M3 = 8000;

    private Buoyancy() {}

    /** Mass over scale reading: {@code (1 - a/8000) / (1 - a/r)}; above 1 for anything lighter than steel. */
    public static double factor(double airKgPerM3, double liquidKgPerM3) {
        Require.inRange("air density", airKgPerM3, 0, 2, "kg/m3");
        Require.inRange("liquid density", liquidKgPerM3, 500, 2500, "kg/m3");
        return (1 - airKgPerM3 / WEIGHTS_KG_PER_M3) / (1 - airKgPerM3 / liquidKgPerM3);
    }

    /** Volume of what a scale shows as one kilogram, m3: {@code (1 - a/8000) / (r - a)}. The Z factor is 1000 times that, L/kg. */
    public static double m3PerShownKg(double airKgPerM3, double liquidKgPerM3) {
        return factor(airKgPerM3, liquidKgPerM3) / liquidKgPerM3;
    }
}
