package org.pumpwright.host.calibrate.fluid;

import org.pumpwright.host.quantity.Require;

/**
 * The air around the scale. Thread-safe.
 *
 * @param celsius 0 to 50
 * @param pascals absolute, as a barometer in the room shows, not reduced to sea level; 60 000 to 110 000
 * @param humidityPercent relative, 0 to 100
 */
public record Air(double celsius, double pascals, double humidityPercent) {
    public Air {
        Require.inRange("air temperature", celsius, 0, 50, "°C");
        Require.inRange("air pressure", pascals, 60_000, 110_000, "Pa");
        Require.inRange("air humidity", humidityPercent, 0, 100, "%");
    }

    /** Density by the simple formula, kg/m3: see {@link AirDensity#simplified}. */
    public double kgPerM3() {
        return AirDensity.simplified(this);
    }
}
