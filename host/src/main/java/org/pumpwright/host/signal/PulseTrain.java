package org.pumpwright.host.signal;

import java.util.Arrays;

/**
 * The edges of a pulse meter whose times are known. A board reports with each sample how many edges it has counted and
 * the time of the last; each new count is one edge with number and time, and the edges between them are known by number
 * only. Numbers and times are relative to the first edge kept. Thread-safe.
 */
public final class PulseTrain {
    private static final double NANOS_PER_SECOND = 1e9;

    private final double[] numbers;
    private final double[] seconds;
    private final long pulses;

    private PulseTrain(double[] numbers, double[] seconds, long pulses) {
        this.numbers = numbers;
        this.seconds = seconds;
        this.pulses = pulses;
    }

    /**
     * The train in a row of samples. The edge of the first sample is left out: it may be older than the row.
     *
     * @param edges edges counted up to each sample
     * @param lastEdgeNanos time of the last of them
     * @throws IllegalArgumentException when the counts fall, or edges come without time passing
     */
    public static PulseTrain of(long[] edges, long[] lastEdgeNanos) {
        double[] numbers = new double[edges.length];
        double[] seconds = new double[edges.length];
        int kept = 0;
        int firstKept = 0;
        for (int i = 1; i < edges.length; i++) {
            if (edges[i] == edges[i - 1]) {
                continue;
            }
            requireGrowing(edges, lastEdgeNanos, i);
            firstKept = kept == 0 ? i : firstKept;
            numbers[kept] = edges[i] - edges[firstKept];
            seconds[kept] = (lastEdgeNanos[i] - lastEdgeNanos[firstKept]) / NANOS_PER_SECOND;
            kept++;
        }
        long pulses = edges.length == 0 ? 0 : edges[edges.length - 1] - edges[0];
        return new PulseTrain(Arrays.copyOf(numbers, kept), Arrays.copyOf(seconds, kept), pulses);
    }

    private static void requireGrowing(long[] edges, long[] lastEdgeNanos, int i) {
        if (edges[i] < edges[i - 1] || lastEdgeNanos[i] <= lastEdgeNanos[i - 1]) {
            throw new IllegalArgumentException("edge %d at %d ns follows edge %d at %d ns: both must grow"
                    .formatted(edges[i], lastEdgeNanos[i], edges[i - 1], lastEdgeNanos[i - 1]));
        }
    }

    /** Pulses counted from the first sample to the last, those without a known time included. */
    public long pulses() {
        return pulses;
    }

    /** Number of edges with a known time. */
    public int size() {
        return numbers.length;
    }

    /** Number of each edge with a known time, the first being 0. */
    public double[] numbers() {
        return numbers.clone();
    }

    /** Time of each of them, s, the first being 0. */
    public double[] seconds() {
        return seconds.clone();
    }

    /** Mean interval between neighbouring edges with known times, s a pulse. */
    public double[] meanIntervals() {
        double[] intervals = new double[Math.max(0, size() - 1)];
        Arrays.setAll(intervals, i -> (seconds[i + 1] - seconds[i]) / (numbers[i + 1] - numbers[i]));
        return intervals;
    }
}
