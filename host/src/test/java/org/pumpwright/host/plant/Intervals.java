package org.pumpwright.host.plant;

/** Statistics of the times between edges. */
record Intervals(double[] seconds) {

    static Intervals between(double[] edges) {
        double[] seconds = new double[edges.length - 1];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = edges[i + 1] - edges[i];
        }
        return new Intervals(seconds);
    }

    double mean() {
        double sum = 0;
        for (double s : seconds) {
            sum += s;
        }
        return sum / seconds.length;
    }

    /** Standard deviation over mean. */
    double variation() {
        return Math.sqrt(product(0) / seconds.length) / mean();
    }

    double lagOneCorrelation() {
        return product(1) / product(0);
    }

    /** Root mean square over the blades of each blade's mean deviation, over the mean. */
    double bladePattern(int blades) {
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

    private double product(int lag) {
        double mean = mean();
        double sum = 0;
        for (int i = lag; i < seconds.length; i++) {
            sum += (seconds[i] - mean) * (seconds[i - lag] - mean);
        }
        return sum;
    }
}
