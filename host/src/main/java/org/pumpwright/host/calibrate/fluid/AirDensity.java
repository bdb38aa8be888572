package org.pumpwright.host.calibrate.fluid;

import org.pumpwright.host.quantity.Require;

/**
 * Density of moist air. CIPM-2007 is the formula of A. Picard, R. S. Davis, M. Glaeser and K. Fujii, Revised formula for the
 * density of moist air (CIPM-2007), Metrologia 45 (2008) 149. The simple one is that of OIML R 111-1, E.3. Thread-safe.
 */
public final class AirDensity {
    /** Mole fraction of carbon dioxide that goes with the formula's usual constants. */
    public static final double USUAL_CARBON_DIOXIDE = 0.000_4;

    private static final double GAS_CONSTANT = 8.314472;
    private static final double WATER_MOLAR_MASS = 18.01528e-3;
    private static final double ZERO_CELSIUS_KELVIN = 273.15;

    private AirDensity() {}

    /** The CIPM-2007 density, kg/m3, with the usual share of carbon dioxide. */
    public static double cipm2007(Air air) {
        return cipm2007(air, USUAL_CARBON_DIOXIDE);
    }

    /**
     * The CIPM-2007 density, kg/m3.
     *
     * @param carbonDioxide mole fraction, 0 to 0.01
     */
    public static double cipm2007(Air air, double carbonDioxide) {
        Require.inRange("share of carbon dioxide", carbonDioxide, 0, 0.01, "");
        double kelvin = air.celsius() + ZERO_CELSIUS_KELVIN;
        double vapour = air.humidityPercent() / 100 * enhancement(air) * saturationPascals(kelvin) / air.pascals();
        double dryMolarMass = (28.96546 + 12.011 * (carbonDioxide - USUAL_CARBON_DIOXIDE)) * 1e-3;
        return air.pascals()
                * dryMolarMass
                / (compressibility(air, vapour) * GAS_CONSTANT * kelvin)
                * (1 - vapour * (1 - WATER_MOLAR_MASS / dryMolarMass));
    }

    /**
     * The simple density, kg/m3: {@code (0.34848 p - 0.009 h exp(0.061 t)) / (273.15 + t)}, p in hPa, h in %, t in degrees
     * Celsius. Within 0.02 % of CIPM-2007 in a room, which is 0.2 parts in a million of a weighed volume.
     */
    public static double simplified(Air air) {
        double hectopascals = air.pascals() / 100;
        return (0.34848 * hectopascals - 0.009 * air.humidityPercent() * StrictMath.exp(0.061 * air.celsius()))
                / (ZERO_CELSIUS_KELVIN + air.celsius());
    }

    private static double saturationPascals(double kelvin) {
        return StrictMath.exp(
                1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin + 33.93711047 - 6.3431645e3 / kelvin);
    }

    private static double enhancement(Air air) {
        return 1.00062 + 3.14e-8 * air.pascals() + 5.6e-7 * air.celsius() * air.celsius();
    }

    private static double compressibility(Air air, double vapour) {
        double t = air.celsius();
        double ratio = air.pascals() / (t + ZERO_CELSIUS_KELVIN);
        double first = 1.58123e-6
                - 2.9331e-8 * t
                + 1.1043e-10 * t * t
                + (5.707e-6 - 2.051e-8 * t) * vapour
                + (1.9898e-4 - 2.376e-6 * t) * vapour * vapour;
        return 1 - ratio * first + ratio * ratio * (1.83e-11 - 0.765e-8 * vapour * vapour);
    }
}
