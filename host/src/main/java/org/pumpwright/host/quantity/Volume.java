package org.pumpwright.host.quantity;

/**
 * A volume of liquid. The US gallon is 231 cubic inches, so exactly 3.785411784 L (NIST Handbook 44, appendix C).
 * Thread-safe.
 *
 * @param m3 cubic metres, finite
 */
public record Volume(double m3) {
    /** One US gallon in cubic metres, exact. */
    public static final double M3_PER_US_GALLON = 3.785411784e-3;

    public Volume {
        Require.finite("volume", m3);
    }

    public static Volume ofUsGallons(double gallons) {
        return new Volume(gallons * M3_PER_US_GALLON);
    }

    public double usGallons() {
        return m3 / M3_PER_US_GALLON;
    }

    public double litres() {
        return m3 * 1000;
    }
}
