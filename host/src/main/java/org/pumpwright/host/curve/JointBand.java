package org.pumpwright.host.curve;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.pumpwright.host.quantity.Require;

/**
 * One factor for all features together: a new healthy unit, run once, has <em>all</em> of them inside {@code mean +- k s} with
 * a given probability, the uncertainty of mean and s included (simultaneous prediction limits). The chance that a healthy
 * unit is flagged is thus held for the whole verdict, not for each feature.
 *
 * <p>Features of one unit go together, and each s is as uncertain as few units make it, so the factor is a quantile of the
 * largest {@code |x - mean| / s}, found by drawing many populations of the same size with the correlations of the units
 * (parametric bootstrap). It is never larger than Bonferroni's factor, which holds however features go together. Assumes that
 * units are spread normally. Thread-safe.
 */
public final class JointBand {
    /** The 95 % point of the normal distribution. */
    private static final double SAFE_SIDE = 1.645;

    private static final long SEED = 20_260_101;
    private static final int DRAWS = 40_000;

    private JointBand() {}

    /**
     * The factor by which every feature's standard deviation is multiplied.
     *
     * @param deviations of each feature, as {@link VarianceComponents#deviations} gives them; features without spread are
     *     passed over
     * @param units number of units behind mean and standard deviations, at least 3
     * @param degreesOfFreedom behind the standard deviations, 2 to 10000; fewer are safe
     * @param inside share of healthy units that lie inside with all features, 0.5 to 0.9999
     */
    public static double factor(List<double[]> deviations, int units, double degreesOfFreedom, double inside) {
        return factor(deviations, units, degreesOfFreedom, inside, DRAWS, SEED);
    }

    static double factor(
            List<double[]> deviations, int units, double degreesOfFreedom, double inside, int draws, long seed) {
        Require.inRange("number of units", units, 3, 10_000, "");
        Require.inRange("degrees of freedom", degreesOfFreedom, 2, 10_000, "");
        Require.inRange("share inside", inside, 0.5, 0.9999, "");
        List<double[]> spread = deviations.stream().filter(JointBand::varies).toList();
        double bonferroni = bonferroni(Math.max(1, spread.size()), units, degreesOfFreedom, inside);
        if (spread.size() < 2) {
            return bonferroni;
        }
        double[][] root = Correlations.root(spread, degreesOfFreedom);
        double[] largest = largest(root, units, (int) degreesOfFreedom, draws, new NormalDraws(seed));
        return Math.min(bonferroni, safeQuantile(largest, inside));
    }

    /** Bonferroni's factor: each feature gets an equal part of what may lie outside. */
    static double bonferroni(int features, int units, double degreesOfFreedom, double inside) {
        double t = new TDistribution(degreesOfFreedom).inverseCumulativeProbability(1 - (1 - inside) / (2 * features));
        return t * Math.sqrt(1 + 1.0 / units);
    }

    private static boolean varies(double[] deviations) {
        return Arrays.stream(deviations).anyMatch(d -> d != 0);
    }

    private static double[] largest(double[][] root, int units, int degreesOfFreedom, int draws, NormalDraws normal) {
        double ofTheDifference = Math.sqrt(1 + 1.0 / units);
        double[] independent = new double[root.length];
        double[] difference = new double[root.length];
        double[] unit = new double[root.length];
        double[] squares = new double[root.length];
        double[] largest = new double[draws];
        for (int draw = 0; draw < draws; draw++) {
            correlated(root, independent, difference, normal);
            Arrays.fill(squares, 0);
            for (int i = 0; i < degreesOfFreedom; i++) {
                correlated(root, independent, unit, normal);
                addSquares(unit, squares);
            }
            double most = 0;
            for (int f = 0; f < root.length; f++) {
                most = Math.max(most, difference[f] * difference[f] / squares[f]);
            }
            largest[draw] = ofTheDifference * Math.sqrt(most * degreesOfFreedom);
        }
        return largest;
    }

    private static void addSquares(double[] values, double[] squares) {
        for (int f = 0; f < values.length; f++) {
            squares[f] += values[f] * values[f];
        }
    }

    private static void correlated(double[][] root, double[] independent, double[] into, NormalDraws normal) {
        for (int i = 0; i < root.length; i++) {
            independent[i] = normal.next();
            double sum = 0;
            for (int k = 0; k <= i; k++) {
                sum += root[i][k] * independent[k];
            }
            into[i] = sum;
        }
    }

    /** The quantile's upper 95 % bound by its rank, so that the draw errs to the safe side. */
    private static double safeQuantile(double[] values, double share) {
        Arrays.sort(values);
        double rank = values.length * share + SAFE_SIDE * Math.sqrt(values.length * share * (1 - share));
        return values[Math.min(values.length, (int) Math.ceil(rank)) - 1];
    }
}
