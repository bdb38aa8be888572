package org.pumpwright.host.curve;

import java.util.List;

/**
 * How the features of a population go together: a correlation matrix from few units, drawn towards independence by as much as
 * chance alone may have put into it, and its root. Thread-safe.
 */
final class Correlations {
    /** Keeps the matrix positive definite where features repeat each other. */
    private static final double LEAST_SHRINKAGE = 1e-9;

    private Correlations() {}

    /**
     * Lower triangular root of the shrunken correlation matrix. The intensity is that of J. Schaefer and K. Strimmer (2005,
     * Statistical Applications in Genetics and Molecular Biology 4, article 32): the summed variances of the correlations over
     * the sum of their squares, here with the normal-theory variance {@code (1 - r^2)^2 / degreesOfFreedom}. The target is
     * independence, for which the largest of several deviations is largest (Z. Sidak, 1967).
     *
     * @param deviations of each feature, as {@link VarianceComponents#deviations} gives them; none of them all 0
     */
    static double[][] root(List<double[]> deviations, double degreesOfFreedom) {
        double[][] r = matrix(deviations);
        double keep = 1 - shrinkage(r, degreesOfFreedom);
        for (int i = 0; i < r.length; i++) {
            for (int j = 0; j < r.length; j++) {
                r[i][j] = i == j ? 1 : keep * r[i][j];
            }
        }
        return cholesky(r);
    }

    /** Share by which the correlations are drawn towards 0. */
    static double shrinkage(double[][] r, double degreesOfFreedom) {
        double variances = 0;
        double squares = 0;
        for (int i = 0; i < r.length; i++) {
            for (int j = 0; j < i; j++) {
                double square = r[i][j] * r[i][j];
                variances += (1 - square) * (1 - square) / degreesOfFreedom;
                squares += square;
            }
        }
        return squares == 0 ? LEAST_SHRINKAGE : Math.min(1, Math.max(LEAST_SHRINKAGE, variances / squares));
    }

    static double[][] matrix(List<double[]> deviations) {
        int n = deviations.size();
        double[][] r = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double[] a = deviations.get(i);
                double[] b = deviations.get(j);
                r[i][j] = product(a, b) / Math.sqrt(product(a, a) * product(b, b));
                r[j][i] = r[i][j];
            }
        }
        return r;
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[][] cholesky(double[][] r) {
        double[][] root = new double[r.length][r.length];
        for (int i = 0; i < r.length; i++) {
            for (int j = 0; j <= i; j++) {
                double rest = r[i][j];
                for (int k = 0; k < j; k++) {
                    rest -= root[i][k] * root[j][k];
                }
                root[i][j] = i == j ? Math.sqrt(Math.max(rest, LEAST_SHRINKAGE)) : rest / root[j][j];
            }
        }
        return root;
    }
}
