package org.pumpwright.host.calibrate.field;

import org.pumpwright.host.quantity.Require;

/**
 * The 1/128-acre method: a gallon has 128 fluid ounces, so the ounces that one nozzle puts on 1/128 of an acre are the gallons per
 * acre. An acre is 43 560 square feet, 1/128 of it 340.3125. Taught so by extension services, e.g. LSU AgCenter. Thread-safe.
 */
public final class OunceMethod {
    private static final double SQUARE_FEET = 43_560.0 / 128;
    private static final double INCHES_PER_FOOT = 12;
    private static final double M_PER_INCH = 0.0254;
    private static final double M_PER_FOOT = 0.3048;
    private static final double OUNCES_PER_GALLON = 128;

    private OunceMethod() {}

    /**
     * How far to drive for 1/128 acre under one nozzle or row, metres.
     *
     * @param spacingM between nozzles or rows, metres
     */
    public static double courseM(double spacingM) {
        Require.inRange("spacing", spacingM, 0.01, 20, "m");
        double inches = spacingM / M_PER_INCH;
        return SQUARE_FEET * INCHES_PER_FOOT / inches * M_PER_FOOT;
    }

    /** Seconds for the course at a speed. */
    public static double seconds(double spacingM, double metresPerSecond) {
        Require.inRange("speed", metresPerSecond, 0.01, 50, "m/s");
        return courseM(spacingM) / metresPerSecond;
    }

    /** Gallons per acre from the fluid ounces that one nozzle gave in that time: the same number. */
    public static double gallonsPerAcre(double fluidOunces) {
        return Require.inRange("caught volume", fluidOunces, 0, 1e5, "fl oz");
    }

    /**
     * Gallons per acre when another time was caught than the course takes.
     *
     * @param fluidOunces caught
     * @param caughtSeconds over this time
     * @param courseSeconds that the course takes
     */
    public static double gallonsPerAcre(double fluidOunces, double caughtSeconds, double courseSeconds) {
        Require.inRange("time of catching", caughtSeconds, 0.1, 1e5, "s");
        Require.inRange("time of the course", courseSeconds, 0.1, 1e5, "s");
        return gallonsPerAcre(fluidOunces) * courseSeconds / caughtSeconds;
    }

    /** One nozzle's flow in gallons a minute from the ounces caught in a time. */
    public static double gallonsPerMinute(double fluidOunces, double seconds) {
        Require.inRange("time of catching", seconds, 0.1, 1e5, "s");
        return fluidOunces / OUNCES_PER_GALLON * 60 / seconds;
    }
}
