package org.pumpwright.host.curve;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.pumpwright.host.quantity.Require;

/**
 * Tolerance factors of a normal population of unknown mean and spread, exact by integrating over the sample mean: the
 * integrals behind the tables of ISO 16269-6, to which the formulas of Howe and Natrella are approximations. Thread-safe.
 */
public final class ToleranceFactor {
    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final double ACCURACY = 1e-9;
    private static final int MOST_STEPS = 200;
    private static final int NODES = 64;

    /** The sample mean lies within this many of its standard deviations but for 1e-15. */
    private static final double WIDEST_MEAN = 8;

    private static final double LEAST_FACTOR = 1e-3;
    private static final double LARGEST_FACTOR = 1e7;

    private ToleranceFactor() {}

    /**
     * Two-sided factor k: {@code mean +- k s} of n units holds at least the share {@code coverage} of the population with
     * probability {@code confidence}.
     *
     * @param units n, 2 to 10000
     * @param coverage 0.5 to 0.99999
     * @param confidence 0.5 to 0.9999
     */
    public static double twoSided(int units, double coverage, double confidence) {
        Require.inRange("number of units", units, 2, 10_000, "");
        return twoSided(units, units - 1, coverage, confidence);
    }

    /**
     * Two-sided factor where the mean is known as well as that of so many units measured once, and the standard deviation has
     * degrees of freedom of its own. For one new run of a new unit behind repeated runs, with
     * {@link VarianceComponents#degreesOfFreedom}, an approximation as good as Satterthwaite's.
     *
     * @param effectiveUnits (s / standard uncertainty of the mean) squared, 1 to 100000
     * @param degreesOfFreedom 0.5 to 100000
     * @param coverage 0.5 to 0.99999
     * @param confidence 0.5 to 0.9999
     */
    public static double twoSided(double effectiveUnits, double degreesOfFreedom, double coverage, double confidence) {
        requireRanges(effectiveUnits, degreesOfFreedom, coverage, confidence);
        ChiSquaredDistribution spread = new ChiSquaredDistribution(degreesOfFreedom);
        GaussIntegrator nodes = new GaussIntegratorFactory().legendre(NODES, 0, WIDEST_MEAN);
        double[] halfWidths = halfWidths(nodes, effectiveUnits, coverage);
        // The integrand is even in the mean.
        return solve(k -> 2 * confidence(nodes, halfWidths, spread, k) - confidence);
    }

    /**
     * One-sided factor k: at least the share {@code coverage} of the population lies below {@code mean + k s} of n units, or
     * above {@code mean - k s}, with probability {@code confidence}. The same as the quantile of a noncentral t over the root
     * of n.
     *
     * @param units n, 2 to 10000
     * @param coverage 0.5 to 0.99999
     * @param confidence 0.5 to 0.9999
     */
    public static double oneSided(int units, double coverage, double confidence) {
        Require.inRange("number of units", units, 2, 10_000, "");
        return oneSided(units, units - 1, coverage, confidence);
    }

    /**
     * One-sided factor for a mean and a standard deviation as in {@link #twoSided(double, double, double, double)}.
     *
     * @param effectiveUnits 1 to 100000
     * @param degreesOfFreedom 0.5 to 100000
     * @param coverage 0.5 to 0.99999
     * @param confidence 0.5 to 0.9999
     */
    public static double oneSided(double effectiveUnits, double degreesOfFreedom, double coverage, double confidence) {
        requireRanges(effectiveUnits, degreesOfFreedom, coverage, confidence);
        ChiSquaredDistribution spread = new ChiSquaredDistribution(degreesOfFreedom);
        double z = NORMAL.inverseCumulativeProbability(coverage);
        // A mean beyond this holds the coverage however small the standard deviation is; the integrand has a kink
        // there.
        double enough = Math.min(WIDEST_MEAN, z * Math.sqrt(effectiveUnits));
        GaussIntegrator nodes = new GaussIntegratorFactory().legendre(NODES, -WIDEST_MEAN, enough);
        double[] distances = new double[nodes.getNumberOfPoints()];
        for (int i = 0; i < distances.length; i++) {
            distances[i] = z - nodes.getPoint(i) / Math.sqrt(effectiveUnits);
        }
        double beyond = 1 - NORMAL.cumulativeProbability(enough);
        return solve(k -> confidence(nodes, distances, spread, k) + beyond - confidence);
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

    private static void requireRanges(double units, double degreesOfFreedom, double coverage, double confidence) {
        Require.inRange("effective number of units", units, 1, 100_000, "");
        Require.inRange("degrees of freedom", degreesOfFreedom, 0.5, 100_000, "");
        Require.inRange("coverage", coverage, 0.5, 0.99999, "");
        Require.inRange("confidence", confidence, 0.5, 0.9999, "");
    }

    /** At each node of the sample mean: how wide an interval about it must be to hold the coverage. */
    private static double[] halfWidths(GaussIntegrator nodes, double units, double coverage) {
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

    /** The probability that k s is at least the distance needed, over the nodes of the mean. */
    private static double confidence(
            GaussIntegrator nodes, double[] distances, ChiSquaredDistribution spread, double k) {
        double sum = 0;
        for (int i = 0; i < distances.length; i++) {
            double leastSpread = spread.getDegreesOfFreedom() * distances[i] * distances[i] / (k * k);
            double wideEnough = 1 - spread.cumulativeProbability(leastSpread);
            sum += nodes.getWeight(i) * NORMAL.density(nodes.getPoint(i)) * wideEnough;
        }
        return sum;
    }

    private static double solve(UnivariateFunction lack) {
        return solver().solve(MOST_STEPS, lack, LEAST_FACTOR, LARGEST_FACTOR);
    }

    private static BracketingNthOrderBrentSolver solver() {
        return new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, ACCURACY * 1e-3, 5);
    }
}
