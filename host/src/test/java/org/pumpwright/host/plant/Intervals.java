package org.pumpwright.host.plant;

import java.util.Arrays;

/** Statistics of the times between edges. */
@SuppressWarnings("ArrayRecordComponent") // compared by nobody
public record Intervals(double[] seconds) {

    public static Intervals between(double[] edges) {
        double[] seconds = new double[edges.length - 1];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = edges[i + 1] - edges[i];
        }
        return new Intervals(seconds);
    }

    public double mean() {
        double sum = 0;
        for (double s : seconds) {
            sum += s;
        }
        return sum / seconds.length;
    }

    /** Standard deviation over mean. */
    public double variation() {
        return Math.sqrt(product(0) / seconds.length) / mean();
    }

    public double lagOneCorrelation() {
        return product(1) / product(0);
    }

    /** Root mean square over the blades of each blade's mean deviation, over the mean. */
    public double bladePattern(int blades) {
        double square = 0;
        for (int b = 0; b < blades; b++) {
            double sum = 0;
            int n = 0;
            for (int i = b; i < seconds.length; i += blades) {
                sum += seconds[i];
                n++;
            }
            double deviation = sum / n / mean() - 1;
            square += deviation * deviation / blades;
        }
        return Math.sqrt(square);
    }

    /** Percent of the intervals above a multiple of their median. */
    public double percentAbove(double multiple) {
        double median = median();
        return 100.0 * Arrays.stream(seconds).filter(s -> s > multiple * median).count() / seconds.length;
    }

    /** Percent of the intervals below a multiple of their median. */
    public double percentBelow(double multiple) {
        double median = median();
        return 100.0 * Arrays.stream(seconds).filter(s -> s < multiple * median).count() / seconds.length;
    }

    public double median() {
        double[] sorted = seconds.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private double product(int lag) {
        double mean = mean();
        double sum = 0;
        for (int i = lag; i < seconds.length; i++) {
            sum += (seconds[i] - mean) * (seconds[i - lag] - mean);
        }
        return sum;
    }
}
