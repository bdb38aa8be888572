package org.pumpwright.host.demand;

import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Require;

/**
 * A planter in its work. A row that is {@code w} wide and goes at speed {@code v} covers the area {@code v w} in a second;
 * with the rate {@code r} on it, its flow is
 *
 * <pre>q = r v w</pre>
 *
 * <p>In US units: 1 mph is 88 ft/min, the row is {@code in/12} ft wide and an acre has 43,560 square feet, so
 * {@code gpm = gpa * 88 mph * (in/12) / 43560 = gpa * mph * in / 5940}. With the width in feet, as for a whole boom,
 * {@code gpm = gpa * mph * ft / 495}. Both constants are exact, and so is the conversion to SI here. Thread-safe.
 *
 * @param rows outlets that are fed, 1 to 200
 * @param spacingMetres distance of one row from the next, 0.02 to 30; the swath, where there is one outlet
 * @param rate volume on an area
 * @param speed over the ground
 */
public record Planter(int rows, double spacingMetres, ApplicationRate rate, GroundSpeed speed) {
    /** One inch, m. */
    public static final double METRES_PER_INCH = 0.0254;

    public Planter {
        Require.inRange("number of rows", rows, 1, 200, "");
        Require.inRange("spacing", spacingMetres, 0.02, 30, "m");
    }

    /** What one row needs. */
    public FlowRate perRow() {
        return new FlowRate(rate.m3PerM2() * speed.metresPerSecond() * spacingMetres);
    }

    /** What all rows need. */
    public FlowRate whole() {
        return of(rows);
    }

    /** What this many rows need. */
    public FlowRate of(int someRows) {
        return new FlowRate(perRow().m3PerSecond() * someRows);
    }

    /** The rate that comes of this flow into all rows. */
    public static ApplicationRate rateOf(FlowRate whole, int rows, double spacingMetres, GroundSpeed speed) {
        return new ApplicationRate(whole.m3PerSecond() / (rows * spacingMetres * speed.metresPerSecond()));
    }

    /** The speed at which this flow into all rows gives the rate. */
    public GroundSpeed speedAt(FlowRate whole) {
        return new GroundSpeed(whole.m3PerSecond() / (rows * spacingMetres * rate.m3PerM2()));
    }
}
