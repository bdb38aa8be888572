package org.pumpwright.host.signal;

import org.pumpwright.host.quantity.Uncertain;

/** Mean, scatter and correlation of readings taken one after another. Thread-safe. */
public final class Statistics {
    /** Below this many readings a correlation says nothing. */
    private static final int LEAST_FOR_CORRELATION = 8;

    private static final double SIGNIFICANT_DEVIATIONS = 1.96;

    private Statistics() {}

    /**
     * Arithmetic mean.
     *
     * @throws IllegalArgumentException without readings
     */
    public static double mean(double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("a mean needs at least 1 reading, there is none");
        }
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Sample standard deviation (divisor n - 1); 0 for a single reading. */
    public static double deviation(double[] values) {
        double mean = mean(values);
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return values.length == 1 ? 0 : Math.sqrt(squares / (values.length - 1));
    }

    /** Standard deviation over mean; not a number where the mean is 0. */
    public static double coefficientOfVariation(double[] values) {
        return deviation(values) / mean(values);
    }

    /** Correlation of each reading with the one before it, -1 to 1; 0 where nothing varies. */
    public static double lagOne(double[] values) {
        double mean = mean(values);
        double squares = 0;
        double products = 0;
        for (int i = 0; i < values.length; i++) {
            double here = values[i] - mean;
            squares += here * here;
            if (i > 0) {
                products += here * (values[i - 1] - mean);
            }
        }
        return squares == 0 ? 0 : products / squares;
    }

    /**
     * The mean with its standard uncertainty (JCGM 100, 4.2.3). Readings that follow each other too closely carry fewer
     * independent facts than their number; see {@link #independent}.
     *
     * @throws IllegalArgumentException without readings
     */
    public static Uncertain uncertainMean(double[] values) {
        double effective = independent(values);
        double u = deviation(values) / Math.sqrt(effective);
        return new Uncertain(mean(values), u, Math.max(1, effective - 1));
    }

    /**
     * How many independent readings these are worth: {@code n (1 - r) / (1 + r)} for a first-order autoregressive series
     * with lag-one correlation r (textbook result for large n), at least 2. A correlation that is negative, or within
     * what chance gives to independent readings, changes nothing.
     */
    public static double independent(double[] values) {
        int n = values.length;
        double r = n < LEAST_FOR_CORRELATION ? 0 : lagOne(values);
        if (r <= SIGNIFICANT_DEVIATIONS / Math.sqrt(n)) {
            return n;
        }
        return Math.max(2, n * (1 - r) / (1 + r));
    }
}
