package org.pumpwright.host.signal;

import java.util.Arrays;
import org.pumpwright.host.quantity.Require;

/**
 * The intervals of a pulse train in seven figures: what a board's pulse window tells, or the same from the intervals
 * themselves. Thread-safe.
 *
 * @param intervals how many there are, 3 or more
 * @param meanSeconds their mean, above 0
 * @param variation standard deviation over mean, 0 or more
 * @param lagOne correlation of each interval with the one before it, -1 to 1 but for rounding at the ends
 * @param longShare share above 1.6 times the reference, 0 to 1
 * @param shortShare share below 0.5 times the reference, 0 to 1
 * @param mostOverMean longest over mean, 1 or more
 */
public record IntervalStatistics(
        int intervals,
        double meanSeconds,
        double variation,
        double lagOne,
        double longShare,
        double shortShare,
        double mostOverMean) {
    /** An interval above this many times the reference is long: a pulse is missing in it. */
    public static final double LONG = 1.6;

    /** An interval below this share of the reference is short: a pulse too many. */
    public static final double SHORT = 0.5;

    private static final int LEAST_INTERVALS = 3;

    public IntervalStatistics {
        Require.inRange("intervals", intervals, LEAST_INTERVALS, Integer.MAX_VALUE, "");
        Require.inRange("mean interval", meanSeconds, Double.MIN_NORMAL, 1e9, "s");
        Require.inRange("variation", variation, 0, 1e9, "");
        Require.inRange("lag-one correlation", lagOne, -2, 2, "");
        Require.inRange("share of long intervals", longShare, 0, 1, "");
        Require.inRange("share of short intervals", shortShare, 0, 1, "");
        Require.inRange("longest over mean", mostOverMean, 0, 1e9, "");
    }

    /**
     * The sums that a board keeps over a window; all times in the same unit of this many seconds.
     *
     * @param intervals how many there are
     * @param sum of the intervals
     * @param squares sum of their squares
     * @param lagged sum of each interval times the one before it
     * @param pairs how many products that are: all intervals, or one fewer where the window follows none
     * @param most longest
     * @param longs how many are above 1.6 times the reference
     * @param shorts how many are below half of it
     * @param unitSeconds length of the unit
     */
    public record Sums(
            int intervals,
            double sum,
            double squares,
            double lagged,
            int pairs,
            double most,
            int longs,
            int shorts,
            double unitSeconds) {}

    /**
     * From the intervals; long and short are told against their median.
     *
     * @throws IllegalArgumentException with fewer than 3 intervals
     */
    public static IntervalStatistics of(double[] intervalSeconds) {
        int n = intervalSeconds.length;
        Require.inRange("intervals", n, LEAST_INTERVALS, Integer.MAX_VALUE, "");
        double[] sorted = intervalSeconds.clone();
        Arrays.sort(sorted);
        double median = sorted[n / 2];
        double mean = Statistics.mean(intervalSeconds);
        return new IntervalStatistics(
                n,
                mean,
                Statistics.deviation(intervalSeconds) / mean,
                Statistics.lagOne(intervalSeconds),
                share(Arrays.stream(sorted).filter(t -> t > LONG * median).count(), n),
                share(Arrays.stream(sorted).filter(t -> t < SHORT * median).count(), n),
                sorted[n - 1] / mean);
    }

    /**
     * From a board's sums; long and short are told against the mean of the window before. The sums do not tell the first
     * and the last interval, which leaves {@code sqrt(2) / (n variation)} of doubt in the lag-one correlation.
     *
     * @throws IllegalArgumentException with fewer than 3 intervals
     */
    public static IntervalStatistics of(Sums sums) {
        int n = (int) Require.inRange("intervals", sums.intervals, LEAST_INTERVALS, Integer.MAX_VALUE, "");
        double mean = sums.sum / n;
        double variance = Math.max(0, sums.squares - n * mean * mean) / (n - 1);
        double covariance = sums.lagged / Math.max(1, sums.pairs) - mean * mean;
        return new IntervalStatistics(
                n,
                mean * sums.unitSeconds,
                Math.sqrt(variance) / mean,
                variance == 0 ? 0 : Math.max(-1, Math.min(1, covariance / variance)),
                share(sums.longs, n),
                share(sums.shorts, n),
                sums.most / mean);
    }

    private static double share(long some, int all) {
        return some / (double) all;
    }
}
