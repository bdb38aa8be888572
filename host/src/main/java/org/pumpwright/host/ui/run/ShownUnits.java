package org.pumpwright.host.ui.run;

import java.util.Locale;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.UnitSystem;

/** The units that flows and pressures are drawn in. Thread-safe. */
final class ShownUnits {
    private static final double PASCALS_PER_KILOPASCAL = 1000;

    private ShownUnits() {}

    static double flow(double m3PerSecond, UnitSystem units) {
        FlowRate flow = new FlowRate(m3PerSecond);
        return units == UnitSystem.US ? flow.gallonsPerMinute() : flow.litresPerMinute();
    }

    static String flow(UnitSystem units) {
        return units == UnitSystem.US ? "gal/min" : "L/min";
    }

    static double pressure(double pascals, UnitSystem units) {
        return units == UnitSystem.US ? pascals / Pressure.PASCALS_PER_PSI : pascals / PASCALS_PER_KILOPASCAL;
    }

    static String pressure(UnitSystem units) {
        return units == UnitSystem.US ? "psi" : "kPa";
    }

    static String fixed(String pattern, double value) {
        if (Double.isNaN(value)) {
            return "\u2013";
        }
        String printed = String.format(Locale.ROOT, pattern, value);
        // Noise around nothing is no negative quantity.
        return printed.matches("-0\\.?0*[^0-9]*") ? printed.substring(1) : printed;
    }
}
