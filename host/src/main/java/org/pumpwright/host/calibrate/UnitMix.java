package org.pumpwright.host.calibrate;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Require;

/**
 * Two figures for the same thing that differ by the ratio of two units. Thread-safe.
 *
 * @param ratio first over second, as it would be exactly
 * @param words which units may have been taken for each other
 */
public record UnitMix(double ratio, String words) {
    /** How near the ratio of two figures must come to be suspected. */
    private static final double NEAR = 0.03;

    private static final double US_GALLON_LITRES = 3.785411784;
    private static final double IMPERIAL_GALLON_LITRES = 4.54609;
    private static final double POUND_KG = 0.45359237;

    /** Pounds of water in a US gallon at 60 degrees Fahrenheit. */
    private static final double POUNDS_PER_GALLON = 8.338;

    private static final List<UnitMix> KNOWN = List.of(
            new UnitMix(US_GALLON_LITRES, "US gallons and litres"),
            new UnitMix(IMPERIAL_GALLON_LITRES, "imperial gallons and litres"),
            new UnitMix(IMPERIAL_GALLON_LITRES / US_GALLON_LITRES, "imperial and US gallons"),
            new UnitMix(10, "per gallon and per 10 gallons, or a decimal point"),
            new UnitMix(1 / POUND_KG, "pounds and kilograms"),
            new UnitMix(POUNDS_PER_GALLON, "pounds and gallons of water"),
            new UnitMix(60, "per second and per minute"),
            new UnitMix(1000, "a unit and its thousandth, such as kilograms and grams"));

    /** The units that may have been mixed up between two figures, when their ratio is that of two known ones. */
    public static Optional<UnitMix> between(double one, double other) {
        Require.inRange("first figure", one, Double.MIN_NORMAL, Double.MAX_VALUE, "");
        Require.inRange("second figure", other, Double.MIN_NORMAL, Double.MAX_VALUE, "");
        double ratio = one / other;
        return KNOWN.stream()
                .map(mix -> ratio >= 1 ? mix : new UnitMix(1 / mix.ratio, mix.words))
                .filter(mix -> Math.abs(ratio / mix.ratio - 1) <= NEAR)
                .min(Comparator.comparingDouble(mix -> Math.abs(ratio / mix.ratio - 1)));
    }
}
