package org.pumpwright.host.signal;

import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * The two plainer ways of finding a frequency, to hold {@link PulseFrequency} against and to check counters that know no
 * better. Thread-safe.
 */
public final class CountedFrequency {
    private CountedFrequency() {}

    /**
     * Pulses over a gate that opens and shuts whenever it likes: each end falls anywhere between two pulses, so the error
     * is triangular over one pulse either way, {@code u = 1 / (sqrt(6) gate)} (JCGM 100, 4.3.9). Hz.
     *
     * @throws IllegalArgumentException when the count is below 0 or the gate not above 0
     */
    public static Uncertain overGate(long pulses, double gateSeconds) {
        Require.inRange("pulses", (double) pulses, 0, 1e15, "");
        Require.inRange("gate", gateSeconds, Double.MIN_NORMAL, 1e9, "s");
        return Uncertain.of(pulses / gateSeconds, 1 / (Math.sqrt(6) * gateSeconds));
    }

    /**
     * Reciprocal counting: from the first edge to the last, {@code f = N / (t_last - t_first)}. Two edges stray, so
     * {@code u(f)/f = sqrt(2) s / (t_last - t_first)}, {@code (n (n + 1)) / (6 (n - 1))} times the variance of the
     * regression over the n edges. Hz.
     *
     * @param jitterSeconds standard deviation of one edge, s
     * @throws IllegalArgumentException with fewer than 2 edges
     */
    public static Uncertain reciprocal(PulseTrain train, double jitterSeconds) {
        Require.inRange("edges of known time", train.size(), 2, Integer.MAX_VALUE, "");
        Require.inRange("edge jitter", jitterSeconds, 0, 1e9, "s");
        int last = train.size() - 1;
        double pulses = train.numbers()[last];
        double seconds = train.seconds()[last];
        return Uncertain.of(pulses / seconds, Math.sqrt(2) * jitterSeconds * pulses / (seconds * seconds));
    }
}
