package org.pumpwright.host.quantity;

import java.util.Locale;

/**
 * Gauge pressure. One psi is 6894.757 Pa (NIST SP 811, appendix B). Thread-safe.
 *
 * @param pascals finite
 */
public record Pressure(double pascals) {
    /** One pound-force per square inch in pascals. */
    public static final double PASCALS_PER_PSI = 6894.757293168;

    public Pressure {
        Require.finite("pressure", pascals);
    }

    public static Pressure ofPsi(double psi) {
        return new Pressure(psi * PASCALS_PER_PSI);
    }

    public double psi() {
        return pascals / PASCALS_PER_PSI;
    }

    /** The pressure for a person, e.g. {@code 11.8 psi}. */
    public String print(UnitSystem units) {
        return switch (units) {
            case US -> String.format(Locale.ROOT, "%.1f psi", psi());
            case METRIC -> String.format(Locale.ROOT, "%.0f kPa", pascals / 1000);
        };
    }
}
