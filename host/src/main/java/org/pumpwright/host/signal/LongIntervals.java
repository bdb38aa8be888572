package org.pumpwright.host.signal;

import java.util.Arrays;

/**
 * How the long intervals of a train follow each other. Thread-safe.
 *
 * @param count how many are above 1.6 times the median
 * @param spacing the commonest number of intervals from one to the next; 0 with fewer than two
 * @param sameSpacing share of them at that spacing, 0 to 1
 */
record LongIntervals(int count, int spacing, double sameSpacing) {

    static LongIntervals of(double[] intervals) {
        double[] sorted = intervals.clone();
        Arrays.sort(sorted);
        double limit = IntervalStatistics.LONG * sorted[sorted.length / 2];
        int[] spacings = new int[intervals.length + 1];
        int last = -1;
        int count = 0;
        for (int i = 0; i < intervals.length; i++) {
            if (intervals[i] > limit) {
                if (last >= 0) {
                    spacings[i - last]++;
                }
                last = i;
                count++;
            }
        }
        int commonest = 0;
        for (int spacing = 1; spacing < spacings.length; spacing++) {
            commonest = spacings[spacing] > spacings[commonest] ? spacing : commonest;
        }
        return new LongIntervals(count, commonest, count < 2 ? 0 : spacings[commonest] / (count - 1.0));
    }
}
