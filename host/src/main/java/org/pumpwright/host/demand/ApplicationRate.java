package org.pumpwright.host.demand;

import java.util.Locale;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.quantity.Volume;

/**
 * Volume spread on an area. One acre is 43,560 square feet (NIST Handbook 44, appendix C) and one foot 0.3048 m. Thread-safe.
 *
 * @param m3PerM2 cubic metres on a square metre, above 0, at most 0.1 (about 107,000 gal/acre)
 */
public record ApplicationRate(double m3PerM2) {
    /** One acre in square metres, of 43,560 international square feet. */
    public static final double M2_PER_ACRE = 43_560 * 0.3048 * 0.3048;

    private static final double M2_PER_HECTARE = 10_000;

    public ApplicationRate {
        Require.inRange("rate", m3PerM2, Double.MIN_NORMAL, 0.1, "m3/m2");
    }

    public static ApplicationRate ofGallonsPerAcre(double gallonsPerAcre) {
        return new ApplicationRate(gallonsPerAcre * Volume.M3_PER_US_GALLON / M2_PER_ACRE);
    }

    public static ApplicationRate ofLitresPerHectare(double litresPerHectare) {
        return new ApplicationRate(litresPerHectare / 1000 / M2_PER_HECTARE);
    }

    public double gallonsPerAcre() {
        return m3PerM2 / Volume.M3_PER_US_GALLON * M2_PER_ACRE;
    }

    public double litresPerHectare() {
        return m3PerM2 * 1000 * M2_PER_HECTARE;
    }

    /** The rate for a person, e.g. {@code 5.00 gal/acre}. */
    public String print(UnitSystem units) {
        return units == UnitSystem.US
                ? String.format(Locale.ROOT, "%.2f gal/acre", gallonsPerAcre())
                : String.format(Locale.ROOT, "%.1f L/ha", litresPerHectare());
    }
}
