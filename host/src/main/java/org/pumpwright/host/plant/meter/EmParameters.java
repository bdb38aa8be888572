package org.pumpwright.host.plant.meter;

import org.pumpwright.host.plant.Range;

/**
 * An electromagnetic meter. Thread-safe.
 *
 * @param pulsesPerM3 K
 * @param zeroM3PerSecond q_0, flow it sees at rest
 * @param cutOffM3PerSecond flow below which it gives no pulses
 * @param dampingSeconds time constant of its filter
 * @param noiseM3PerSecond standard deviation of one update
 * @param updateHertz updates a second; the pulses of an update come in a burst
 */
public record EmParameters(
        double pulsesPerM3,
        double zeroM3PerSecond,
        double cutOffM3PerSecond,
        double dampingSeconds,
        double noiseM3PerSecond,
        double updateHertz) {

    public EmParameters {
        Range.check("meter K", pulsesPerM3, 1, 1e9, "1/m3");
        Range.check("zero flow", zeroM3PerSecond, -1, 1, "m3/s");
        Range.check("cut-off", cutOffM3PerSecond, 0, 1, "m3/s");
        Range.check("damping", dampingSeconds, 1e-3, 60, "s");
        Range.check("meter noise", noiseM3PerSecond, 0, 1, "m3/s");
        Range.check("update rate", updateHertz, 0.1, 1000, "Hz");
    }

    EmParameters withZeroAndNoise(double zero, double noise) {
        return new EmParameters(pulsesPerM3, zero, cutOffM3PerSecond, dampingSeconds, noise, updateHertz);
    }
}
