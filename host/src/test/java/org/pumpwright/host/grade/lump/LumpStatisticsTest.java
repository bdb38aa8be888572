package org.pumpwright.host.grade.lump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.quantity.Uncertain;

/** A thousand healthy pumps, each read once with errors: what the fit says of itself must be so. */
final class LumpStatisticsTest {
    private static final int PUMPS = 1000;
    private static final double TWO_SIDED_95 = 1.959964;

    private final double[] sum = new double[Layout.LUMPS];
    private final double[] squares = new double[Layout.LUMPS];
    private final int[] inside = new int[Layout.LUMPS];
    private double joint;
    private double chiSquares;
    private int unlikely;

    @ParameterizedTest
    @EnumSource(
            value = Measured.class,
            names = {"SWEEP", "AND_STANDSTILL"})
    void errorsAreAsLargeAsTheirStatedUncertainties(Measured measured) {
        PumpPopulation population = new PumpPopulation(7);
        for (int i = 0; i < PUMPS; i++) {
            PumpParameters pump = population.unit(i);
            count(pump, ((LumpFit.Fitted) LumpFit.of(measured.of(pump, 1000 + i))).lumps());
        }

        for (int i = 0; i < Layout.LUMPS; i++) {
            String lump = Layout.FITTED.get(i).words();
            double mean = sum[i] / PUMPS;
            assertThat(mean).as("bias of " + lump).isBetween(-0.15, 0.15);
            assertThat(Math.sqrt(squares[i] / PUMPS - mean * mean))
                    .as("scatter over stated uncertainty of " + lump)
                    .isBetween(0.95, 1.05);
            assertThat((double) inside[i] / PUMPS).as("coverage of " + lump).isBetween(0.93, 0.97);
        }
        // The whole covariance: squared distances have a chi-square of 5, whose mean over a thousand scatters by 0.1.
        assertThat(joint / PUMPS).isCloseTo(Layout.LUMPS, within(0.3));
        assertThat(chiSquares / PUMPS).isCloseTo(measured.degreesOfFreedom(), within(0.6));
        assertThat((double) unlikely / PUMPS).isBetween(0.03, 0.07);
    }

    private void count(PumpParameters pump, Lumps lumps) {
        double[] errors = new double[Layout.LUMPS];
        double[][] correlation = new double[Layout.LUMPS][Layout.LUMPS];
        for (int i = 0; i < Layout.LUMPS; i++) {
            Lump lump = Layout.FITTED.get(i);
            Uncertain estimate = lumps.estimate(lump).orElseThrow();
            errors[i] = (estimate.value() - SweptPump.truth(pump, lump)) / estimate.standardUncertainty();
            sum[i] += errors[i];
            squares[i] += errors[i] * errors[i];
            inside[i] += Math.abs(errors[i]) <= TWO_SIDED_95 ? 1 : 0;
            for (int j = 0; j < Layout.LUMPS; j++) {
                correlation[i][j] = correlation(lumps, lump, Layout.FITTED.get(j));
            }
        }
        RealVector scaled = new ArrayRealVector(errors);
        joint += scaled.dotProduct(new CholeskyDecomposition(new Array2DRowRealMatrix(correlation))
                .getSolver()
                .solve(scaled));
        chiSquares += lumps.chiSquare();
        unlikely += lumps.probability() < 0.05 ? 1 : 0;
    }

    private static double correlation(Lumps lumps, Lump one, Lump other) {
        return lumps.covariance(one, other) / Math.sqrt(lumps.covariance(one, one) * lumps.covariance(other, other));
    }
}
