package org.pumpwright.host.calibrate.fluid;

import org.pumpwright.host.quantity.Require;

/**
 * A liquid whose density was measured, at a temperature of its own. The density of one batch is not that of a table: published
 * figures for the same grade differ by several percent. Thread-safe.
 *
 * @param name of the product
 * @param measuredKgPerM3 700 to 2000
 * @param measuredCelsius temperature of the sample, -10 to 60
 * @param perKelvin change with temperature, kg/m3 a kelvin, -3 to 0
 * @param halfWidthKgPerM3 the measured density is good to plus and minus this, 0 to 50
 */
public record Product(
        String name, double measuredKgPerM3, double measuredCelsius, double perKelvin, double halfWidthKgPerM3)
        implements Liquid {
    /** Beyond this the straight line from the measured density is not believed. */
    private static final double MOST_KELVIN_AWAY = 15;

    public Product {
        Require.inRange("product density", measuredKgPerM3, 700, 2000, "kg/m3");
        Require.inRange("temperature of the density sample", measuredCelsius, -10, 60, "°C");
        Require.inRange("change of density with temperature", perKelvin, -3, 0, "kg/m3 per kelvin");
        Require.inRange("half-width of the product density", halfWidthKgPerM3, 0, 50, "kg/m3");
    }

    @Override
    public double kgPerM3(double celsius) {
        Require.inRange("product temperature", celsius, leastCelsius(), mostCelsius(), "°C");
        return measuredKgPerM3 + perKelvin * (celsius - measuredCelsius);
    }

    @Override
    public double kgPerM3PerKelvin(double celsius) {
        return perKelvin;
    }

    @Override
    public double leastCelsius() {
        return measuredCelsius - MOST_KELVIN_AWAY;
    }

    @Override
    public double mostCelsius() {
        return measuredCelsius + MOST_KELVIN_AWAY;
    }
}
