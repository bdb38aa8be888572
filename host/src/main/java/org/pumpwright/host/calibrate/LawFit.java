package org.pumpwright.host.calibrate;

import java.util.List;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.pumpwright.host.quantity.Budget;

/**
 * Weighted least squares of {@code K = c - d / Q}, weights by each point's own combined uncertainty. Because it is linear in the
 * points, any K it gives is a weighted sum of theirs. Weights without the correlations are used on purpose: full generalised least
 * squares with a strong common error can put the line outside all points.
 */
final class LawFit {
    private final List<FlowPoint> points;
    private final double[] constant;
    private final double[] slope;

    LawFit(List<FlowPoint> points) {
        this.points = points;
        double sw = 0;
        double sx = 0;
        double sxx = 0;
        for (FlowPoint point : points) {
            double w = weight(point);
            double x = x(point);
            sw += w;
            sx += w * x;
            sxx += w * x * x;
        }
        double determinant = sw * sxx - sx * sx;
        constant = new double[points.size()];
        slope = new double[points.size()];
        for (int i = 0; i < points.size(); i++) {
            double w = weight(points.get(i));
            double x = x(points.get(i));
            constant[i] = w * (sxx - sx * x) / determinant;
            slope[i] = w * (sw * x - sx) / determinant;
        }
    }

    /** The weights of the points in the K at no loss, c. */
    double[] constant() {
        return constant.clone();
    }

    /** The weights of the points in K at a flow. */
    double[] at(double m3PerSecond) {
        double[] weights = new double[constant.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = constant[i] - slope[i] / m3PerSecond;
        }
        return weights;
    }

    /** d, pulses a second. */
    double loss() {
        double sum = 0;
        for (int i = 0; i < slope.length; i++) {
            sum += slope[i] * points.get(i).k().pulsesPerM3();
        }
        return sum;
    }

    Budget lossBudget() {
        return Propagation.ofPoints(points, slope).budget();
    }

    /**
     * The smallest sum of squares of residuals that the law can leave, in units of the points' uncertainties with their
     * correlations; chi-squared distributed with two degrees of freedom less than there are points when the law holds.
     */
    double chiSquared() {
        int n = points.size();
        List<Budget> budgets = points.stream().map(FlowPoint::inPulsesPerM3).toList();
        double[][] covariance = new double[n][n];
        double[][] design = new double[n][2];
        double[] k = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance[i][j] = budgets.get(i).covariance(budgets.get(j));
            }
            design[i][0] = 1;
            design[i][1] = x(points.get(i));
            k[i] = points.get(i).k().pulsesPerM3();
        }
        RealMatrix inverse = inverse(covariance);
        RealMatrix x = MatrixUtils.createRealMatrix(design);
        RealVector y = MatrixUtils.createRealVector(k);
        RealMatrix normal = x.transpose().multiply(inverse).multiply(x);
        RealVector right = x.transpose().multiply(inverse).operate(y);
        RealVector best = MatrixUtils.inverse(normal).operate(right);
        RealVector residual = y.subtract(x.operate(best));
        return residual.dotProduct(inverse.operate(residual));
    }

    private static RealMatrix inverse(double[][] covariance) {
        return new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance))
                .getSolver()
                .getInverse();
    }

    private static double x(FlowPoint point) {
        return -1 / point.flow().m3PerSecond();
    }

    private static double weight(FlowPoint point) {
        double u = point.stated().standardShare() * point.k().pulsesPerM3();
        return 1 / (u * u);
    }
}
