package org.pumpwright.host.demand;

import java.util.Locale;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.UnitSystem;

/**
 * How fast the planter goes over the ground. One mile is 5,280 ft of 0.3048 m, so 1 mph is 88 ft/min. Thread-safe.
 *
 * @param metresPerSecond above 0, at most 30
 */
public record GroundSpeed(double metresPerSecond) {
    private static final double METRES_PER_MILE = 5280 * 0.3048;

    public GroundSpeed {
        Require.inRange("speed", metresPerSecond, Double.MIN_NORMAL, 30, "m/s");
    }

    public static GroundSpeed ofMilesPerHour(double milesPerHour) {
        return new GroundSpeed(milesPerHour * METRES_PER_MILE / 3600);
    }

    public static GroundSpeed ofKilometresPerHour(double kilometresPerHour) {
        return new GroundSpeed(kilometresPerHour / 3.6);
    }

    public double milesPerHour() {
        return metresPerSecond * 3600 / METRES_PER_MILE;
    }

    public double kilometresPerHour() {
        return metresPerSecond * 3.6;
    }

    /** The speed for a person, e.g. {@code 5.50 mph}. */
    public String print(UnitSystem units) {
        return units == UnitSystem.US
                ? String.format(Locale.ROOT, "%.2f mph", milesPerHour())
                : String.format(Locale.ROOT, "%.2f km/h", kilometresPerHour());
    }
}
