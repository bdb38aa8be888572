package org.pumpwright.host.calibrate.fluid;

import org.pumpwright.host.quantity.Require;

/**
 * Density of clean water at the pressure of the atmosphere, 0 to 40 degrees Celsius. The formula is that of M. Tanaka, G. Girard,
 * R. Davis, A. Peuto and N. Bignell, Recommended table for the density of water between 0 and 40 degrees C based on recent
 * experimental reports, Metrologia 38 (2001) 301. Thread-safe.
 */
public final class WaterDensity {
    /** The range of the formula, degrees Celsius. */
    public static final double LEAST_CELSIUS = 0;

    public static final double MOST_CELSIUS = 40;

    private static final double A1_CELSIUS = -3.983035;
    private static final double A2_CELSIUS = 301.797;
    private static final double A3_CELSIUS_SQUARED = 522_528.9;
    private static final double A4_CELSIUS = 69.34881;
    private static final double A5_KG_PER_M3 = 999.974950;

    private WaterDensity() {}

    /**
     * Air-free water, kg/m3.
     *
     * @throws IllegalArgumentException outside 0 to 40 degrees Celsius
     */
    public static double airFree(double celsius) {
        Require.inRange("water temperature", celsius, LEAST_CELSIUS, MOST_CELSIUS, "°C");
        double offPeak = celsius + A1_CELSIUS;
        return A5_KG_PER_M3
                * (1 - offPeak * offPeak * (celsius + A2_CELSIUS) / (A3_CELSIUS_SQUARED * (celsius + A4_CELSIUS)));
    }

    /**
     * What dissolved air takes off the density of water that is saturated with it, kg/m3, below 0. Given with the formula for 0 to 25
     * degrees Celsius, from memory; above 25 it is carried on, where it is below 0.003 kg/m3 (three parts in a million).
     */
    public static double dissolvedAir(double celsius) {
        Require.inRange("water temperature", celsius, LEAST_CELSIUS, MOST_CELSIUS, "°C");
        return Math.min(0, -4.612e-3 + 0.106e-3 * celsius);
    }

    /** Water saturated with air, kg/m3. */
    public static double airSaturated(double celsius) {
        return airFree(celsius) + dissolvedAir(celsius);
    }

    /** Change with temperature, kg/m3 a kelvin, over the kelvin around it; one-sided at the ends of the range. */
    public static double perKelvin(double celsius) {
        double low = Math.max(LEAST_CELSIUS, celsius - 0.5);
        double high = Math.min(MOST_CELSIUS, celsius + 0.5);
        return (airFree(high) - airFree(low)) / (high - low);
    }
}
