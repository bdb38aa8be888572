package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * What the measurement truly adds to the judged features, in stated standard uncertainties: with a right budget the diagonal of
 * its covariance is 1. Thread-safe.
 *
 * @param inU mean and covariance of (measured - true) / u
 */
record Noise(Normal inU) {
    static Noise of(List<Judgement> judged) {
        List<double[]> residuals = new ArrayList<>();
        for (Judgement judgement : judged) {
            if (!judgement.readings().isEmpty()) {
                residuals.add(residual(judgement));
            }
        }
        return new Noise(Normal.of(residuals));
    }

    private static double[] residual(Judgement judgement) {
        double[] is = judgement.trueDeviations();
        double[] residual = new double[is.length];
        for (int i = 0; i < is.length; i++) {
            Judgement.Reading reading = judgement.readings().get(i);
            residual[i] = (reading.deviation() - is[i]) / reading.share();
        }
        return residual;
    }

    /** The covariance of one run's noise, as shares of the centres. */
    RealMatrix covariance(List<Judgement.Reading> readings) {
        return covariance(
                readings.stream().mapToDouble(Judgement.Reading::share).toArray());
    }

    RealMatrix covariance(double[] shares) {
        RealMatrix u = MatrixUtils.createRealDiagonalMatrix(shares);
        return u.multiply(inU.covariance()).multiply(u);
    }

    List<String> lines(String physics) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < Feature.JUDGED.size(); i++) {
            lines.add(String.format(
                    Locale.ROOT,
                    "| %s | %s | %+.2f | %.2f |",
                    physics,
                    Feature.JUDGED.get(i).words(),
                    inU.mean().getEntry(i),
                    Math.sqrt(inU.covariance().getEntry(i, i))));
        }
        return lines;
    }

    static String head() {
        return """
                | physics | feature | mean of (measured - true) / u | standard deviation |
                | --- | --- | --- | --- |""";
    }
}
