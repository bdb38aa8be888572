package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.GALLON_M3;
import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;

/**
 * The stand's rotor meter: edges per volume with a start lag, {@code K(Q) = K_inf (1 - lag/Q)}, silent below its start
 * flow. Thread-safe.
 *
 * @param pulsesPerM3AtInfiniteFlow K_inf, the limit at high flow
 * @param lagM3PerSecond flow spent on turning the rotor against its bearing
 * @param startM3PerSecond flow below which the rotor stands still
 * @param blades edges per turn of the rotor
 * @param bladePatternRelative rms deviation of the blade spacing from even, as share of one spacing
 * @param edgeJitterRelative standard deviation of one edge, as share of one spacing
 * @param slugVolumeM3 volume over which the speeding-up by air slugs stays alike
 */
public record MeterParameters(
        double pulsesPerM3AtInfiniteFlow,
        double lagM3PerSecond,
        double startM3PerSecond,
        int blades,
        double bladePatternRelative,
        double edgeJitterRelative,
        double slugVolumeM3) {

    /** The pulses per US gallon that a healthy meter gives at {@link #NOMINAL_FLOW_M3_PER_SECOND}. */
    static final double NOMINAL_PULSES_PER_GALLON = 3000;

    /** Middle of the small meter's range, where its nominal K holds: 2.5 gal/min. */
    static final double NOMINAL_FLOW_M3_PER_SECOND = 2.5 * GALLON_PER_MINUTE;

    public MeterParameters {
        Range.check("meter K", pulsesPerM3AtInfiniteFlow, 1, 1e9, "1/m3");
        Range.check("meter lag", lagM3PerSecond, 0, 1, "m3/s");
        Range.check("meter start", startM3PerSecond, lagM3PerSecond, 1, "m3/s");
        Range.check("blades", blades, 1, 100, "");
        Range.check("blade pattern", bladePatternRelative, 0, 0.08, "");
        Range.check("edge jitter", edgeJitterRelative, 0, 0.05, "");
        Range.check("slug volume", slugVolumeM3, 1e-9, 1, "m3");
    }

    /** A small rotor meter of nominal 3000 pulses per US gallon; assumed values. */
    static MeterParameters healthy() {
        double lag = 0.004 * GALLON_PER_MINUTE;
        double limit = NOMINAL_PULSES_PER_GALLON / GALLON_M3 / (1 - lag / NOMINAL_FLOW_M3_PER_SECOND);
        return new MeterParameters(limit, lag, 0.05 * GALLON_PER_MINUTE, 6, 0.012, 0.01, 1e-5);
    }

    /** Edges per second at a steady flow in m3/s. */
    public double pulsesPerSecond(double flowM3PerSecond) {
        return flowM3PerSecond < startM3PerSecond ? 0 : pulsesPerM3AtInfiniteFlow * (flowM3PerSecond - lagM3PerSecond);
    }
}
