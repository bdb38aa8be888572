package org.pumpwright.host.quantity;

import java.util.Locale;

/**
 * A temperature. Thread-safe.
 *
 * @param kelvin 0 or more
 */
public record Temperature(double kelvin) {
    private static final double ZERO_CELSIUS_KELVIN = 273.15;

    public Temperature {
        Require.inRange("temperature", kelvin, 0, 10_000, "K");
    }

    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius + ZERO_CELSIUS_KELVIN);
    }

    public double celsius() {
        return kelvin - ZERO_CELSIUS_KELVIN;
    }

    public double fahrenheit() {
        return celsius() * 9 / 5 + 32;
    }

    /** The temperature for a person, e.g. {@code 68 °F}. */
    public String print(UnitSystem units) {
        return switch (units) {
            case US -> String.format(Locale.ROOT, "%.0f °F", fahrenheit());
            case METRIC -> String.format(Locale.ROOT, "%.0f °C", celsius());
        };
    }
}
