package org.pumpwright.host.ui.control;

import java.util.Locale;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.UnitSystem;

/** The units that flows and pressures are drawn in. Thread-safe. */
public final class ShownUnits {
    private static final double PASCALS_PER_KILOPASCAL = 1000;

    private ShownUnits() {}

    /** A flow in gal/min or L/min. */
    public static double flow(double m3PerSecond, UnitSystem units) {
        FlowRate flow = new FlowRate(m3PerSecond);
        return units == UnitSystem.US ? flow.gallonsPerMinute() : flow.litresPerMinute();
    }

    /** The unit that flows are drawn in. */
    public static String flow(UnitSystem units) {
        return units == UnitSystem.US ? "gal/min" : "L/min";
    }

    /** A pressure in psi or kPa. */
    public static double pressure(double pascals, UnitSystem units) {
        return units == UnitSystem.US ? pascals / Pressure.PASCALS_PER_PSI : pascals / PASCALS_PER_KILOPASCAL;
    }

    /** The unit that pressures are drawn in. */
    public static String pressure(UnitSystem units) {
        return units == UnitSystem.US ? "psi" : "kPa";
    }

    /** Printed by a pattern of {@link String#format}; a dash when it is not known. */
    public static String fixed(String pattern, double value) {
        if (Double.isNaN(value)) {
            return "\u2013";
        }
        String printed = String.format(Locale.ROOT, pattern, value);
        // Noise around nothing is no negative quantity.
        return printed.matches("-0\\.?0*[^0-9]*") ? printed.substring(1) : printed;
    }
}
