package org.pumpwright.host.grade.lump;

import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.Pair;
import org.pumpwright.host.quantity.Uncertain;

/**
 * What the fit makes 0: each reading's left-over over its standard uncertainty, with its derivatives. Confined to one thread.
 */
final class Rows {
    private final double[] leftOver;
    private final double[][] slopes;
    private int filled;

    Rows(int rows, int unknowns) {
        leftOver = new double[rows];
        slopes = new double[rows][unknowns];
    }

    /**
     * One reading.
     *
     * @param model what the channel should read
     * @param read what it reads
     * @param own where the unknowns of this point begin
     * @param owns how many there are
     */
    void add(Gradient model, Uncertain read, int own, int owns) {
        double weight = 1 / read.standardUncertainty();
        leftOver[filled] = (model.getValue() - read.value()) * weight;
        for (int i = 0; i < Layout.LATENT; i++) {
            slopes[filled][i] = model.getPartialDerivative(i) * weight;
        }
        for (int i = 0; i < owns; i++) {
            slopes[filled][own + i] = model.getPartialDerivative(Layout.LATENT + i) * weight;
        }
        filled++;
    }

    /** A quantity known beforehand, in its standard deviations. */
    void addKnown(int index, double deviations) {
        leftOver[filled] = deviations;
        slopes[filled][index] = 1;
        filled++;
    }

    Pair<RealVector, RealMatrix> all() {
        return new Pair<>(new ArrayRealVector(leftOver, false), new Array2DRowRealMatrix(slopes, false));
    }
}
