package org.pumpwright.benchmarks.window;

/**
 * What charts are fed with: so many series of so many values, slow and fast waves that are the same for every chart. Thread-safe.
 *
 * @param series how many
 * @param points values of each, the history
 */
record Recording(int series, int points) {
    /** Half an hour at 30 values a second of 8 channels. */
    static final Recording HALF_HOUR = new Recording(8, 54_000);

    private static final double PER_SECOND = 30;

    /** Feeds the history. */
    void feed(FedChart chart) {
        for (int i = 0; i < points; i++) {
            feed(chart, i);
        }
    }

    /** Feeds one value of each series; i may lie beyond the history. */
    void feed(FedChart chart, int i) {
        for (int one = 0; one < series; one++) {
            chart.add(i / PER_SECOND, one, value(i, one));
        }
    }

    private static double value(int i, int one) {
        return 2 + one * 0.3 + Math.sin(i * 0.002 * (one + 1)) + 0.2 * Math.sin(i * 1.7);
    }
}
