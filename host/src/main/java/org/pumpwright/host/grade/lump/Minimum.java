package org.pumpwright.host.grade.lump;

import java.util.Arrays;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;

/**
 * Where the sum of squares is least, by Levenberg's and Marquardt's method, and the inverse of the normal matrix there. The
 * arithmetic has a fixed order and no function of the machine: the same model gives the same bits everywhere. Thread-safe.
 */
final class Minimum {
    /** Looser ones settle early and cost a digit or two of the parameters; tighter ones are below rounding. */
    private static final double COST_ACCURACY = 1e-14;

    private static final double ACCURACY = 1e-12;

    /** Rounds of the search; 5 to 15 are usual. */
    private static final int MOST_ROUNDS = 500;

    /** A direction that the readings move along by less than this share of its parts is left open. */
    private static final double OPEN = 1e-12;

    private final double[] at;
    private final double[][] covariance;
    private final double sumOfSquares;

    private Minimum(double[] at, double[][] covariance, double sumOfSquares) {
        this.at = at;
        this.covariance = covariance;
        this.sumOfSquares = sumOfSquares;
    }

    /**
     * Makes the left-overs small.
     *
     * @param leftOvers their values and derivatives
     * @param rows how many they are, at least as many as unknowns
     * @param start where the search begins
     * @throws org.hipparchus.exception.MathRuntimeException when the search does not settle, or settles where the readings
     *     leave an unknown open
     */
    static Minimum of(MultivariateJacobianFunction leftOvers, int rows, double[] start) {
        Optimum found = new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(COST_ACCURACY)
                .withParameterRelativeTolerance(ACCURACY)
                .withOrthoTolerance(COST_ACCURACY)
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .model(leftOvers)
                        .target(new ArrayRealVector(rows))
                        .lazyEvaluation(false)
                        .maxEvaluations(MOST_ROUNDS)
                        .maxIterations(MOST_ROUNDS)
                        .build());
        return new Minimum(
                found.getPoint().toArray(),
                covariance(found.getJacobian()),
                found.getResiduals().dotProduct(found.getResiduals()));
    }

    /** An unknown. */
    double at(int unknown) {
        return at[unknown];
    }

    /** Covariance of two unknowns, for left-overs of standard deviation 1. */
    double covariance(int one, int other) {
        return covariance[one][other];
    }

    /** Of the left-overs. */
    double sumOfSquares() {
        return sumOfSquares;
    }

    /** From the triangle of the derivatives' QR decomposition, columns of length 1: their product would cost half the digits. */
    private static double[][] covariance(RealMatrix derivatives) {
        int n = derivatives.getColumnDimension();
        double[] lengths = new double[n];
        Arrays.setAll(lengths, j -> derivatives.getColumnVector(j).getNorm());
        RealMatrix scaled = derivatives.copy();
        for (int j = 0; j < n; j++) {
            scaled.setColumnVector(j, scaled.getColumnVector(j).mapDivide(lengths[j]));
        }
        RealMatrix triangle = new QRDecomposition(scaled, OPEN).getR().getSubMatrix(0, n - 1, 0, n - 1);
        RealMatrix inverse = new QRDecomposition(triangle, OPEN).getSolver().getInverse();
        double[][] covariance = inverse.multiply(inverse.transpose()).getData();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance[i][j] /= lengths[i] * lengths[j];
            }
        }
        return covariance;
    }
}
