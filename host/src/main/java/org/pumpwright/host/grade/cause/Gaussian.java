package org.pumpwright.host.grade.cause;

/** Mean and covariance of the readings that a run has, in its order. Confined to one thread; its arrays are not copied. */
final class Gaussian {
    private final double[] mean;
    private final double[][] covariance;

    Gaussian(double[] mean, double[][] covariance) {
        this.mean = mean;
        this.covariance = covariance;
    }

    double[] mean() {
        return mean;
    }

    double[][] covariance() {
        return covariance;
    }

    /**
     * The units between two states of a fault, of which the shares {@code [share - width/2, share + width/2]} are meant: both
     * moments straight between those of the two, and what the width of the stretch adds along the way.
     */
    Gaussian towards(Gaussian graver, double share, double width) {
        int n = mean.length;
        double[] between = new double[n];
        double[] step = new double[n];
        for (int i = 0; i < n; i++) {
            between[i] = mean[i] + share * (graver.mean[i] - mean[i]);
            step[i] = width * (graver.mean[i] - mean[i]);
        }
        double[][] both = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                both[i][j] = (1 - share) * covariance[i][j] + share * graver.covariance[i][j] + step[i] * step[j] / 12;
            }
        }
        return new Gaussian(between, both);
    }
}
