package org.pumpwright.host.plant;

/**
 * Sizes in which the model's starting values are known, as SI. US gallon 3.785411784e-3 m3 exactly (231 cubic inches);
 * pound-force per square inch 6894.757293168 Pa (from the exact pound, inch and standard gravity). Thread-safe.
 */
public final class UsUnits {

    public static final double GALLON_M3 = 3.785411784e-3;
    public static final double GALLON_PER_MINUTE = GALLON_M3 / 60.0;
    public static final double PSI = 6894.757293168;
    public static final double ZERO_CELSIUS_KELVIN = 273.15;

    private UsUnits() {}

    /** Nozzle coefficient in m3/s per root pascal from gallons per minute per root psi. */
    public static double nozzle(double gallonsPerMinutePerRootPsi) {
        return gallonsPerMinutePerRootPsi * GALLON_PER_MINUTE / Math.sqrt(PSI);
    }
}
