package org.pumpwright.host.signal;

import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * Frequency of a pulse train by least-squares regression of edge time on edge number. For white edge jitter of standard
 * deviation s the slope of n edges has the variance {@code 12 s^2 / (n (n^2 - 1))}, the Cramer-Rao bound (textbook; for
 * counters "The Omega counter", arXiv:1506.05009). It needs no more than what samples tell: a count and the time of its
 * last edge. Edges known by number only cost precision in proportion, nothing else. Thread-safe.
 */
public final class PulseFrequency {
    /** Least scatter of one edge: the boards' clock ticks every 0.5 us, rectangular (JCGM 100, 4.3.7). */
    private static final double TICK_SCATTER_SECONDS = 0.5e-6 / Math.sqrt(12);

    /** Fewest edges with known times for a regression with something left to judge it by. */
    private static final int LEAST_EDGES = 3;

    /** Fewer revolutions with known edges cannot tell a blade's place from the trend. */
    private static final int LEAST_REVOLUTIONS = 3;

    private static final int UNKNOWN = 0;
    private static final int MOST_BLADES = 100;

    private PulseFrequency() {}

    /**
     * Pulses per second, with standard uncertainty and degrees of freedom; the blade count is found from the train itself
     * where a pattern shows. The uncertainty comes from the residuals; where they stray slowly (air, surge, drift) it is
     * that of the slow straying.
     *
     * <p>Too few edges for a regression: the count over the window, whose error is triangular over one pulse either way
     * (standard uncertainty {@code 1/sqrt(6)} pulse). No pulse at all: 0 Hz, where anything up to one pulse in the window
     * is as likely (rectangular, so {@code 1/sqrt(3)} pulse about the 0 reported).
     *
     * @param windowSeconds length of the window in which the train was watched, above 0
     * @throws IllegalArgumentException when the window is not above 0
     */
    public static Uncertain hertz(PulseTrain train, double windowSeconds) {
        return hertzOf(train, windowSeconds, UNKNOWN);
    }

    /**
     * As {@link #hertz(PulseTrain, double)} for a rotor of known blade count: the blades' own places are fitted along with
     * the slope where at least 3 revolutions of known edges are there.
     *
     * @param blades pulses a revolution, 1 to 100; 1 looks for no pattern
     * @throws IllegalArgumentException when window or blades are out of range
     */
    public static Uncertain hertz(PulseTrain train, double windowSeconds, int blades) {
        Require.inRange("blade count", blades, 1, MOST_BLADES, "");
        return hertzOf(train, windowSeconds, blades);
    }

    private static Uncertain hertzOf(PulseTrain train, double windowSeconds, int blades) {
        Require.inRange("window", windowSeconds, Double.MIN_NORMAL, 1e9, "s");
        if (train.pulses() == 0) {
            return Uncertain.of(0, 1 / (Math.sqrt(3) * windowSeconds));
        }
        if (train.size() < LEAST_EDGES) {
            return CountedFrequency.overGate(train.pulses(), windowSeconds);
        }
        return regression(train.numbers(), train.seconds(), blades);
    }

    private static Uncertain regression(double[] numbers, double[] seconds, int blades) {
        EdgeLine line = line(numbers, seconds, blades);
        EdgeNoise noise = EdgeNoise.of(line);
        double deviation = Math.max(Math.sqrt(noise.variance()), TICK_SCATTER_SECONDS);
        double period = line.slope();
        return new Uncertain(
                1 / period, line.slopeUncertainty(deviation) / (period * period), noise.degreesOfFreedom());
    }

    private static EdgeLine line(double[] numbers, double[] seconds, int blades) {
        EdgeLine plain = EdgeLine.of(numbers, seconds, 1);
        if (plain.scatter() <= TICK_SCATTER_SECONDS) {
            return plain;
        }
        int marks = blades == UNKNOWN
                ? BladePattern.detect(numbers, plain.residuals()).blades()
                : blades;
        boolean enough = numbers.length >= LEAST_REVOLUTIONS * marks;
        return marks == 1 || !enough ? plain : EdgeLine.of(numbers, seconds, marks);
    }
}
