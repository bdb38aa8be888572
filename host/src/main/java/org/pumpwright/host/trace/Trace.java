package org.pumpwright.host.trace;

import java.util.List;

/**
 * A whole run as it was recorded. Thread-safe.
 *
 * @param channels what the raw readings mean
 * @param samples in order of the board's time
 * @param points the points that were finished, in the order of the plan
 * @param stretches what was done besides points, in the order in which it was finished
 * @param answers what people answered, in their order
 */
public record Trace(
        Channels channels,
        List<Sample> samples,
        List<PointMark> points,
        List<Stretch> stretches,
        List<Answer> answers) {
    public Trace {
        samples = List.copyOf(samples);
        points = List.copyOf(points);
        stretches = List.copyOf(stretches);
        answers = List.copyOf(answers);
    }

    /** A run of nothing but points. */
    public Trace(Channels channels, List<Sample> samples, List<PointMark> points) {
        this(channels, samples, points, List.of(), List.of());
    }

    /** The stretches of a step that are of this kind. */
    public List<Stretch> stretches(String step, Stretch.Kind kind) {
        return stretches.stream()
                .filter(stretch -> stretch.step().equals(step) && stretch.kind() == kind)
                .toList();
    }

    /** The samples of a stretch, both ends included. */
    public List<Sample> during(Stretch stretch) {
        return between(stretch.fromNanos(), stretch.toNanos());
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
