package org.pumpwright.host.quantity;

import java.util.Locale;

/**
 * Volume per time. Thread-safe.
 *
 * @param m3PerSecond cubic metres per second, finite; negative flows run backwards
 */
public record FlowRate(double m3PerSecond) {
    private static final double M3_PER_SECOND_PER_GPM = Volume.M3_PER_US_GALLON / 60;

    public FlowRate {
        Require.finite("flow", m3PerSecond);
    }

    public static FlowRate ofGallonsPerMinute(double gallonsPerMinute) {
        return new FlowRate(gallonsPerMinute * M3_PER_SECOND_PER_GPM);
    }

    public double gallonsPerMinute() {
        return m3PerSecond / M3_PER_SECOND_PER_GPM;
    }

    public double litresPerMinute() {
        return m3PerSecond * 60_000;
    }

    /** The flow for a person, e.g. {@code 2.06 gal/min}. */
    public String print(UnitSystem units) {
        return switch (units) {
            case US -> String.format(Locale.ROOT, "%.2f gal/min", gallonsPerMinute());
            case METRIC -> String.format(Locale.ROOT, "%.2f L/min", litresPerMinute());
        };
    }
}
