package org.pumpwright.host.signal;

import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * Frequency of a pulse train by least-squares regression of edge time on edge number. For white edge jitter of standard
 * deviation s the slope of n edges has the variance {@code 12 s^2 / (n (n^2 - 1))}, the Cramer-Rao bound; counting over a
 * gate knows the frequency no better than one pulse in the gate. Thread-safe.
 */
public final class PulseFrequency {
    /** Least scatter of one edge: the boards' clock ticks every 0.5 us, rectangular (JCGM 100, 4.3.7). */
    private static final double TICK_SCATTER_SECONDS = 0.5e-6 / Math.sqrt(12);

    /** Fewest edges with known times for a regression with something left to judge it by. */
    private static final int LEAST_EDGES = 3;

    private PulseFrequency() {}

    /**
     * Pulses per second, with standard uncertainty and degrees of freedom. The uncertainty comes from the residuals; where
     * neighbouring residuals are alike (the meter's blade pattern) it grows as for a first-order autoregressive series, and
     * where the flow wandered it is at least that of the mean interval.
     *
     * <p>Too few edges for a regression: the count over the window, whose error is triangular over one pulse either way
     * (standard uncertainty {@code 1/sqrt(6)} pulse). No pulse at all: 0 Hz, where anything up to one pulse in the window
     * is as likely (rectangular, so {@code 1/sqrt(3)} pulse about the 0 reported).
     *
     * @param windowSeconds length of the window in which the train was watched, above 0
     */
    public static Uncertain hertz(PulseTrain train, double windowSeconds) {
        Require.inRange("window", windowSeconds, Double.MIN_NORMAL, 1e9, "s");
        if (train.pulses() == 0) {
            return Uncertain.of(0, 1 / (Math.sqrt(3) * windowSeconds));
        }
        if (train.size() < LEAST_EDGES) {
            return Uncertain.of(train.pulses() / windowSeconds, 1 / (Math.sqrt(6) * windowSeconds));
        }
        return regression(train);
    }

    private static Uncertain regression(PulseTrain train) {
        LineFit line = LineFit.of(train.numbers(), train.seconds());
        double period = line.slope();
        double independent = Statistics.independent(line.residuals());
        double scatter = Math.max(line.scatter(), TICK_SCATTER_SECONDS);
        double jitter = line.slopeUncertainty(scatter) * Math.sqrt(train.size() / independent);
        double u = Math.max(jitter, wander(train));
        return new Uncertain(1 / period, u / (period * period), Math.max(1, independent - 2));
    }

    /**
     * Uncertainty of the period, s, when the flow itself wandered: then the intervals are alike, their errors add up along
     * the train, and it is the mean interval that counts. The regression then does 6/5 worse in variance than the two ends
     * alone (slope of a random walk, textbook). 0 where the intervals are not alike.
     */
    private static double wander(PulseTrain train) {
        double[] intervals = train.meanIntervals();
        double independent = Statistics.independent(intervals);
        boolean alike = independent < intervals.length;
        return alike ? Statistics.deviation(intervals) * Math.sqrt(1.2 / independent) : 0;
    }
}
