package org.pumpwright.host.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Uncertain;

/**
 * Duty at which flow begins on a slow ramp up, or ends on a ramp down. Flow begins somewhere in the one pulse before the
 * first sustained edge, so half a pulse is taken off and the rest is rectangular (JCGM 100, 4.3.7): with a ramp of
 * {@code v} a second and first pulses of {@code f}, {@code d = d(t_edge - 1/(2f))} and {@code u = v / (f sqrt(12))}. The
 * duty itself is known to a sample: {@code v dt / sqrt(12)} more. The lag of the flow behind the drive is not taken out;
 * it grows with {@code v}. Thread-safe.
 *
 * @param duty the threshold, 0 to 1
 * @param seconds when it was passed
 * @param latencySeconds one pulse at the threshold, s: what the edges cannot resolve
 */
public record RampThreshold(Uncertain duty, double seconds, double latencySeconds) {
    /** Slower than this is dripping, not flow. */
    private static final double MOST_GAP_SECONDS = 1;

    private static final int SUSTAINED_GAPS = 4;

    /** The first sustained flow; empty where there is none. Arrays as in {@link #stop}. */
    public static Optional<RampThreshold> start(
            double[] seconds, double[] duty, long[] edges, double[] lastEdgeSeconds) {
        double[] times = edgeTimes(seconds, edges, lastEdgeSeconds);
        for (int i = 0; i + SUSTAINED_GAPS < times.length; i++) {
            if (sustained(times, i)) {
                double gap = times[i + 1] - times[i];
                return Optional.of(at(seconds, duty, times[i] - gap / 2, gap));
            }
        }
        return Optional.empty();
    }

    /**
     * The end of the last sustained flow; empty where there is none.
     *
     * @param seconds times of the samples, growing, s
     * @param duty duty at each, 0 to 1
     * @param edges edges counted up to each
     * @param lastEdgeSeconds time of the last of them, s
     * @throws IllegalArgumentException when the arrays differ in length or hold fewer than 2 samples
     */
    public static Optional<RampThreshold> stop(
            double[] seconds, double[] duty, long[] edges, double[] lastEdgeSeconds) {
        double[] times = edgeTimes(seconds, edges, lastEdgeSeconds);
        for (int i = times.length - 1; i >= SUSTAINED_GAPS; i--) {
            if (sustained(times, i - SUSTAINED_GAPS)) {
                double gap = times[i] - times[i - 1];
                return Optional.of(at(seconds, duty, times[i] + gap / 2, gap));
            }
        }
        return Optional.empty();
    }

    private static boolean sustained(double[] times, int from) {
        for (int i = from; i < from + SUSTAINED_GAPS; i++) {
            if (times[i + 1] - times[i] > MOST_GAP_SECONDS) {
                return false;
            }
        }
        return true;
    }

    /** Each edge with a time; those known by number only are spread evenly over the sample they came in. */
    private static double[] edgeTimes(double[] seconds, long[] edges, double[] lastEdgeSeconds) {
        int n = seconds.length;
        if (n < 2 || edges.length != n || lastEdgeSeconds.length != n) {
            throw new IllegalArgumentException("%d times, %d counts and %d edge times: they must be as many, at least 2"
                    .formatted(n, edges.length, lastEdgeSeconds.length));
        }
        List<Double> times = new ArrayList<>();
        for (int i = 1; i < n; i++) {
            long more = edges[i] - edges[i - 1];
            double from = Math.max(seconds[i - 1], edges[i - 1] == edges[0] ? seconds[i - 1] : lastEdgeSeconds[i - 1]);
            for (long k = 1; k <= more; k++) {
                times.add(from + (lastEdgeSeconds[i] - from) * k / more);
            }
        }
        return times.stream().mapToDouble(t -> t).toArray();
    }

    private static RampThreshold at(double[] seconds, double[] duty, double time, double gap) {
        if (duty.length != seconds.length) {
            throw new IllegalArgumentException(
                    "%d times and %d duties: they must be as many".formatted(seconds.length, duty.length));
        }
        int i = 1;
        while (i < seconds.length - 1 && seconds[i] < time) {
            i++;
        }
        double step = seconds[i] - seconds[i - 1];
        double share = Math.max(0, Math.min(1, (time - seconds[i - 1]) / step));
        double found = duty[i - 1] + share * (duty[i] - duty[i - 1]);
        double rate = rate(seconds, duty, time);
        double u = rate * gap / Math.sqrt(12);
        return new RampThreshold(
                Uncertain.of(found, u).with(rate * step / Math.sqrt(12), Double.POSITIVE_INFINITY), time, gap);
    }

    /** Change of the duty a second, without sign, over the second about this time. */
    private static double rate(double[] seconds, double[] duty, double time) {
        int from = 0;
        while (from < seconds.length - 2 && seconds[from] < time - 0.5) {
            from++;
        }
        int to = seconds.length - 1;
        while (to > from + 1 && seconds[to] > time + 0.5) {
            to--;
        }
        return Math.abs(duty[to] - duty[from]) / (seconds[to] - seconds[from]);
    }
}
