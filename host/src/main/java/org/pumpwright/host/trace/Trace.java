package org.pumpwright.host.trace;

import java.util.List;

/**
 * A whole run as it was recorded. Thread-safe.
 *
 * @param channels what the raw readings mean
 * @param samples in order of the board's time
 * @param points the points that were finished, in the order of the plan
 */
public record Trace(Channels channels, List<Sample> samples, List<PointMark> points) {
    public Trace {
        samples = List.copyOf(samples);
        points = List.copyOf(points);
    }

    /** The samples in which a point was measured, both ends included. */
    public List<Sample> measured(PointMark point) {
        return between(point.measureFromNanos(), point.endNanos());
    }

    /** The samples between two board times, both ends included. */
    public List<Sample> between(long fromNanos, long toNanos) {
        int from = firstAtOrAfter(fromNanos);
        int to = firstAtOrAfter(toNanos + 1);
        return samples.subList(from, to);
    }

    private int firstAtOrAfter(long nanos) {
        int low = 0;
        int high = samples.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (samples.get(middle).boardNanos() < nanos) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
