package org.pumpwright.host.grade.cause;

/**
 * Lower triangular root of a covariance, for squared distances and their determinant (textbook). Only the lower half of the
 * matrix is read. Thread-safe once built.
 */
final class Cholesky {
    /** Keeps a matrix that is singular by rounding usable. */
    private static final double LEAST_PIVOT = 1e-12;

    private final double[][] root;
    private final double halfLogDeterminant;

    Cholesky(double[][] covariance) {
        int n = covariance.length;
        root = new double[n][];
        double half = 0;
        for (int i = 0; i < n; i++) {
            double[] row = new double[i + 1];
            for (int j = 0; j <= i; j++) {
                double[] other = j == i ? row : root[j];
                double rest = covariance[i][j];
                for (int k = 0; k < j; k++) {
                    rest -= row[k] * other[k];
                }
                row[j] = j == i ? Math.sqrt(Math.max(rest, LEAST_PIVOT)) : rest / other[j];
            }
            root[i] = row;
            half += StrictMath.log(row[i]);
        }
        halfLogDeterminant = half;
    }

    double halfLogDeterminant() {
        return halfLogDeterminant;
    }

    /** Squared Mahalanobis distance of a deviation. */
    double squaredDistance(double[] deviation) {
        double[] z = whitened(deviation);
        double sum = 0;
        for (double value : z) {
            sum += value * value;
        }
        return sum;
    }

    private double[] whitened(double[] deviation) {
        double[] z = new double[deviation.length];
        for (int i = 0; i < z.length; i++) {
            double rest = deviation[i];
            double[] row = root[i];
            for (int k = 0; k < i; k++) {
                rest -= row[k] * z[k];
            }
            z[i] = rest / row[i];
        }
        return z;
    }

    /**
     * By how much the squared distance falls when one reading is left out, the largest of all: {@code (V^-1 d)_i^2 /
     * (V^-1)_ii} (textbook, the inverse of a partitioned matrix).
     */
    double largestShare(double[] deviation) {
        int n = deviation.length;
        double[] solved = whitened(deviation);
        for (int i = n - 1; i >= 0; i--) {
            double rest = solved[i];
            for (int k = i + 1; k < n; k++) {
                rest -= root[k][i] * solved[k];
            }
            solved[i] = rest / root[i][i];
        }
        double largest = 0;
        for (int i = 0; i < n; i++) {
            largest = Math.max(largest, solved[i] * solved[i] / inverseDiagonal(i));
        }
        return largest;
    }

    private double inverseDiagonal(int index) {
        int n = root.length;
        double[] column = new double[n];
        double sum = 0;
        for (int i = index; i < n; i++) {
            double rest = i == index ? 1 : 0;
            for (int k = index; k < i; k++) {
                rest -= root[i][k] * column[k];
            }
            column[i] = rest / root[i][i];
            sum += column[i] * column[i];
        }
        return sum;
    }
}
