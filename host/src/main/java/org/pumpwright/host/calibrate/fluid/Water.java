package org.pumpwright.host.calibrate.fluid;

import org.pumpwright.host.quantity.Require;

/**
 * Water from the tap: pure water by {@link WaterDensity} and an allowance for what is dissolved in it. Thread-safe.
 *
 * @param airSaturated whether air is taken as dissolved to saturation; else air-free
 * @param allowanceKgPerM3 added to the density of pure water, -1 to 5. Hard tap water is a few tenths of a kg/m3 heavier than pure
 *     water: common practice, no source
 * @param halfWidthKgPerM3 the allowance is good to plus and minus this, 0 to 5
 */
public record Water(boolean airSaturated, double allowanceKgPerM3, double halfWidthKgPerM3) implements Liquid {
    /** Tap water of unknown hardness: 0.2 kg/m3 heavier than pure water, give or take as much. */
    public static final Water TAP = new Water(false, 0.2, 0.2);

    public Water {
        Require.inRange("tap-water allowance", allowanceKgPerM3, -1, 5, "kg/m3");
        Require.inRange("half-width of the tap-water allowance", halfWidthKgPerM3, 0, 5, "kg/m3");
    }

    @Override
    public String name() {
        return "water";
    }

    @Override
    public double kgPerM3(double celsius) {
        return allowanceKgPerM3 + (airSaturated ? WaterDensity.airSaturated(celsius) : WaterDensity.airFree(celsius));
    }

    @Override
    public double kgPerM3PerKelvin(double celsius) {
        return WaterDensity.perKelvin(celsius);
    }

    @Override
    public double leastCelsius() {
        return WaterDensity.LEAST_CELSIUS;
    }

    @Override
    public double mostCelsius() {
        return WaterDensity.MOST_CELSIUS;
    }
}
