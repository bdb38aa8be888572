package org.pumpwright.benchmarks.records;

import java.util.Arrays;
import java.util.Locale;

/**
 * Median and 99th percentile of some times.
 *
 * @param medianMillis half took less
 * @param p99Millis one of a hundred took more
 */
record Times(double medianMillis, double p99Millis) {
    private static final int WARM_UPS = 20;
    private static final double NANOS_PER_MILLI = 1e6;

    /** What is measured. */
    interface Work {
        void once() throws Exception;
    }

    static Times of(int times, Work work) throws Exception {
        for (int i = 0; i < WARM_UPS; i++) {
            work.once();
        }
        double[] millis = new double[times];
        for (int i = 0; i < times; i++) {
            long start = System.nanoTime();
            work.once();
            millis[i] = (System.nanoTime() - start) / NANOS_PER_MILLI;
        }
        Arrays.sort(millis);
        return new Times(millis[times / 2], millis[Math.min(times - 1, (int) Math.ceil(0.99 * times) - 1)]);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f / %.2f", medianMillis, p99Millis);
    }
}
