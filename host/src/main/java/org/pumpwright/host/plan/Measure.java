package org.pumpwright.host.plan;

/**
 * How long a settled point is measured: at least the least time and the least pulses, then until the flow is known well
 * enough, at most the most time. Thread-safe.
 *
 * @param leastSeconds shortest measurement
 * @param leastPulses fewest pulses
 * @param flowUncertaintyShare standard uncertainty of the mean flow that is small enough, as a share of the flow, without
 *     the meter's calibration, which no waiting makes better; 1 where the least time and pulses are all that is asked
 * @param mostSeconds longest measurement
 */
public record Measure(double leastSeconds, int leastPulses, double flowUncertaintyShare, double mostSeconds) {}
