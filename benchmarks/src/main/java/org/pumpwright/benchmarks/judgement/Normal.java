package org.pumpwright.benchmarks.judgement;

import java.util.Collection;
import java.util.Random;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A normal distribution of several values that go together. Thread-safe.
 *
 * @param mean of each value
 * @param covariance of all
 */
record Normal(RealVector mean, RealMatrix covariance) {
    /** Keeps covariances of values that do not vary invertible; the values are shares or multiples of u. */
    private static final double FLOOR = 1e-10;

    /** Mean and covariance of draws. */
    static Normal of(Collection<double[]> draws) {
        int size = draws.iterator().next().length;
        double[] mean = new double[size];
        for (double[] draw : draws) {
            for (int i = 0; i < size; i++) {
                mean[i] += draw[i] / draws.size();
            }
        }
        double[][] covariance = new double[size][size];
        for (double[] draw : draws) {
            for (int i = 0; i < size; i++) {
                for (int k = 0; k < size; k++) {
                    covariance[i][k] += (draw[i] - mean[i]) * (draw[k] - mean[k]) / (draws.size() - 1);
                }
            }
        }
        return new Normal(MatrixUtils.createRealVector(mean), floored(MatrixUtils.createRealMatrix(covariance)));
    }

    /** With independent noise of mean 0 on top. */
    Normal with(RealMatrix noise) {
        return new Normal(mean, covariance.add(noise));
    }

    double logDensity(RealVector at) {
        CholeskyDecomposition root = decomposed(covariance);
        RealVector off = at.subtract(mean);
        return -0.5 * off.dotProduct(root.getSolver().solve(off)) - 0.5 * Math.log(root.getDeterminant());
    }

    /** What is known of the value behind this distribution once it was measured with noise (conditional normal, textbook). */
    Normal given(RealVector measured, RealMatrix noise) {
        CholeskyDecomposition all = decomposed(covariance.add(noise));
        RealVector to = mean.add(covariance.operate(all.getSolver().solve(measured.subtract(mean))));
        RealMatrix left =
                covariance.subtract(covariance.multiply(all.getSolver().solve(covariance)));
        RealMatrix symmetric = left.add(left.transpose()).scalarMultiply(0.5);
        return new Normal(to, floored(symmetric));
    }

    /** A draw's maker; the same random stream gives the same draws. */
    RealVector draw(RealMatrix root, Random random) {
        double[] independent = new double[mean.getDimension()];
        for (int i = 0; i < independent.length; i++) {
            independent[i] = random.nextGaussian();
        }
        return mean.add(root.operate(MatrixUtils.createRealVector(independent)));
    }

    RealMatrix root() {
        return decomposed(covariance).getL();
    }

    private static RealMatrix floored(RealMatrix covariance) {
        return covariance.add(MatrixUtils.createRealIdentityMatrix(covariance.getRowDimension())
                .scalarMultiply(FLOOR));
    }

    private static CholeskyDecomposition decomposed(RealMatrix matrix) {
        return new CholeskyDecomposition(matrix, 1e-9, 0);
    }
}
