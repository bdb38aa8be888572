package org.pumpwright.host.curve;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.pumpwright.host.quantity.Require;

/** Tolerance factors of a normal population of unknown mean and spread. Thread-safe. */
public final class ToleranceFactor {
    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final double ACCURACY = 1e-9;
    private static final int MOST_STEPS = 200;
    private static final int NODES = 64;

    /** The sample mean lies within this many of its standard deviations but for 1e-15. */
    private static final double WIDEST_MEAN = 8;

    private ToleranceFactor() {}

    /**
     * Two-sided factor k: {@code mean +- k s} of n units holds at least the share {@code coverage} of the population with
     * probability {@code confidence}. Exact, by integrating over the sample mean (the integral behind the tables of
     * ISO 16269-6; Howe's formula is an approximation to it).
     *
     * @param units n, 2 to 10000
     * @param coverage 0.5 to 0.99999
     * @param confidence 0.5 to 0.9999
     */
    public static double twoSided(int units, double coverage, double confidence) {
        Require.inRange("number of units", units, 2, 10_000, "");
        Require.inRange("coverage", coverage, 0.5, 0.99999, "");
        Require.inRange("confidence", confidence, 0.5, 0.9999, "");
        ChiSquaredDistribution spread = new ChiSquaredDistribution(units - 1);
        GaussIntegrator nodes = new GaussIntegratorFactory().legendre(NODES, 0, WIDEST_MEAN);
        double[] halfWidths = halfWidths(nodes, units, coverage);
        return solver().solve(
                        MOST_STEPS, k -> confidence(nodes, halfWidths, spread, units, k) - confidence, 0.1, 100_000);
    }

    /**
     * Two-sided factor for several features judged together: at least the share {@code coverage} of the population has
     * <em>all</em> of them inside {@code mean +- k s}. Each feature is given an equal part of what may lie outside
     * (Bonferroni's inequality), which is on the safe side however the features go together.
     *
     * @param units n, 2 to 10000
     * @param features how many are judged, 1 to 100
     * @param coverage 0.5 to 0.999
     * @param confidence 0.5 to 0.9999, of each feature
     */
    public static double joint(int units, int features, double coverage, double confidence) {
        Require.inRange("number of features", features, 1, 100, "");
        Require.inRange("coverage", coverage, 0.5, 0.999, "");
        return twoSided(units, 1 - (1 - coverage) / features, confidence);
    }

    /** At each node of the sample mean: how wide an interval about it must be to hold the coverage. */
    private static double[] halfWidths(GaussIntegrator nodes, int units, double coverage) {
        double[] halfWidths = new double[nodes.getNumberOfPoints()];
        for (int i = 0; i < halfWidths.length; i++) {
            double offCentre = nodes.getPoint(i) / Math.sqrt(units);
            halfWidths[i] = solver().solve(
                            MOST_STEPS,
                            r -> NORMAL.probability(offCentre - r, offCentre + r) - coverage,
                            0,
                            offCentre + WIDEST_MEAN);
        }
        return halfWidths;
    }

    /** The probability that mean +- k s holds the coverage; both tails of the mean alike. */
    private static double confidence(
            GaussIntegrator nodes, double[] halfWidths, ChiSquaredDistribution spread, int units, double k) {
        double sum = 0;
        for (int i = 0; i < halfWidths.length; i++) {
            double leastSpread = (units - 1) * halfWidths[i] * halfWidths[i] / (k * k);
            double wideEnough = 1 - spread.cumulativeProbability(leastSpread);
            sum += 2 * nodes.getWeight(i) * NORMAL.density(nodes.getPoint(i)) * wideEnough;
        }
        return sum;
    }

    private static BracketingNthOrderBrentSolver solver() {
        return new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, ACCURACY * 1e-3, 5);
    }
}
