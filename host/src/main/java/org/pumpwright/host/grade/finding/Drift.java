package org.pumpwright.host.grade.finding;

import java.util.Arrays;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.LineFit;
import org.pumpwright.host.signal.Statistics;

/**
 * How a reading drifts: the least-squares line through means over equal parts of the time (JCGM 100, H.3). What the line
 * leaves over tells the uncertainty; left-overs that follow each other, as those of a bend do, carry fewer facts than their
 * number. Thread-safe.
 */
final class Drift {
    private static final int MOST_PARTS = 60;
    private static final double LEAST_PART_SECONDS = 1;

    private Drift() {}

    /** How many parts a time is cut into. */
    static int parts(double seconds) {
        return (int) Math.min(MOST_PARTS, Math.floor(seconds / LEAST_PART_SECONDS));
    }

    /**
     * Change a second.
     *
     * @param seconds middles of the parts, at least 3
     * @param means of the parts, same number
     * @param stuck what each mean may be off by because the converter does not show less; rectangular over this width
     */
    static Uncertain perSecond(double[] seconds, double[] means, double stuck) {
        LineFit line = LineFit.of(seconds, means);
        double independent = Statistics.independent(line.residuals());
        double thinner = means.length / independent;
        double u = line.slopeUncertainty(line.scatter()) * Math.sqrt(thinner);
        double length = seconds[seconds.length - 1] - seconds[0];
        // Both ends of the line may be off by as much, either way.
        double byStep = stuck * Math.sqrt(2.0 / 12) / length;
        return new Uncertain(line.slope(), u, Math.max(1, independent - 2)).with(byStep, Double.POSITIVE_INFINITY);
    }

    /** Means of values over equal parts of their time. */
    static double[] means(double[] times, double[] values, int parts) {
        double[] sums = new double[parts];
        int[] counts = new int[parts];
        double length = times[times.length - 1] - times[0];
        for (int i = 0; i < times.length; i++) {
            int part = (int) Math.min(parts - 1, (times[i] - times[0]) / length * parts);
            sums[part] += values[i];
            counts[part]++;
        }
        double[] means = new double[parts];
        Arrays.setAll(means, i -> sums[i] / counts[i]);
        return means;
    }

    /** Middles of equal parts of a time. */
    static double[] middles(double seconds, int parts) {
        double[] middles = new double[parts];
        Arrays.setAll(middles, i -> (i + 0.5) * seconds / parts);
        return middles;
    }
}
