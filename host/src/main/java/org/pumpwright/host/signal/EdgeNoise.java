package org.pumpwright.host.signal;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * How far edge times stray from their line, as the slope of the line feels it. White jitter strays alike at every
 * frequency, and all residuals together tell how much. Air, surge and a drifting flow stray slowly, and the slope feels
 * only the slowest straying; then the residuals' power in the few slowest cosines tells how much, with as many degrees of
 * freedom as there are cosines (equal-weighted cosines: Lazarus, Lewis, Stock and Watson, HAR Inference, 2018). Where that
 * power falls with the square of the frequency the errors of the intervals add up (a random walk), and it is carried on
 * down to the slope by that law; the two are weighed by their likelihood. Thread-safe.
 *
 * @param variance of one edge, s^2, to be used in the formula for white jitter
 * @param degreesOfFreedom behind it
 */
record EdgeNoise(double variance, double degreesOfFreedom) {
    private static final int MOST_COSINES = 8;
    private static final int EDGES_PER_COSINE = 4;

    /** Below this chance the slow straying is not the work of white jitter. */
    private static final double SIGNIFICANT = 0.05;

    /** Flows that wander are held to be this many times as common as bounded straying (own choice: with 8 the stated interval of a walk holds
     * as often as it says). */
    private static final double WALKS_TO_LEVELS = 8;

    /** A random walk strays in the slope by pi^2/10 of what k^2 times its k-th cosine says (integrals of Brownian motion). */
    private static final double WALK_AT_SLOPE = Math.PI * Math.PI / 10;

    /** The noise of this line. */
    static EdgeNoise of(EdgeLine line) {
        double[] residuals = line.residuals();
        double all = dot(residuals, residuals);
        int dof = line.degreesOfFreedom();
        EdgeNoise white = new EdgeNoise(all / dof, dof);
        int cosines = Math.min(MOST_COSINES, (residuals.length - 2) / EDGES_PER_COSINE);
        if (cosines < 2 || dof <= cosines) {
            return white;
        }
        double[] power = slowPower(line, cosines);
        double slow = Statistics.mean(power);
        double rest = Math.max(0, all - slow * cosines) / (dof - cosines);
        return likely(slow / rest, cosines, dof - cosines) ? white : new EdgeNoise(slowVariance(power), cosines);
    }

    private static boolean likely(double ratio, int cosines, int restDof) {
        if (!(ratio > 1)) {
            return true;
        }
        return 1 - new FDistribution(cosines, restDof).cumulativeProbability(ratio) > SIGNIFICANT;
    }

    /**
     * The power at the slope under two spectra, level and falling with the square of the frequency, each weighed by its
     * likelihood (Whittle's, for the powers of a few cosines).
     */
    private static double slowVariance(double[] power) {
        double level = Statistics.mean(power);
        double walk = 0;
        double logs = 0;
        for (int i = 0; i < power.length; i++) {
            double k = i + 2;
            walk += power[i] * k * k / power.length;
            logs += 2 * Math.log(k) / power.length;
        }
        double likelierBy = WALKS_TO_LEVELS * Math.exp(power.length / 2.0 * (Math.log(level) - Math.log(walk) + logs));
        return (level + likelierBy * walk * WALK_AT_SLOPE) / (1 + likelierBy);
    }

    /** Squared shares of the residuals in orthonormal cosines of 1, 1.5, 2 ... periods over the train. */
    private static double[] slowPower(EdgeLine line, int cosines) {
        List<double[]> basis = new ArrayList<>();
        basis.add(unit(line.spreadNumbers().clone()));
        double[] power = new double[cosines];
        for (int i = 0; i < cosines; i++) {
            double[] cosine = line.cosine(i + 2);
            for (double[] earlier : basis) {
                takeOff(cosine, earlier);
            }
            basis.add(unit(cosine));
            double share = dot(cosine, line.residuals());
            power[i] = share * share;
        }
        return power;
    }

    private static void takeOff(double[] values, double[] direction) {
        double share = dot(values, direction);
        for (int i = 0; i < values.length; i++) {
            values[i] -= share * direction[i];
        }
    }

    private static double[] unit(double[] values) {
        double length = Math.sqrt(dot(values, values));
        for (int i = 0; i < values.length; i++) {
            values[i] /= length;
        }
        return values;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
