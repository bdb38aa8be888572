package org.pumpwright.host.curve;

/**
 * The healthy population at one value of effective volts. Thread-safe.
 *
 * @param effectiveVolts V
 * @param flowM3PerSecond mean flow
 * @param flowSpread standard deviation of flow between units, as a share of the mean
 * @param motorAmps mean motor current, A
 * @param motorAmpsSpread standard deviation of the current between units, as a share of the mean
 */
public record CurvePoint(
        double effectiveVolts, double flowM3PerSecond, double flowSpread, double motorAmps, double motorAmpsSpread) {}
