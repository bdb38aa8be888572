package org.pumpwright.host.calibrate;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.pumpwright.host.quantity.Budget;
import org.pumpwright.host.quantity.CoverageFactor;

/**
 * A result's budget and how flat the distribution of its error is.
 *
 * @param budget of the result
 * @param flatFourth sum of the fourth powers of the rectangular contributions
 * @param restFourth sum of the fourth powers of the others, each over its degrees of freedom
 */
record Combined(Budget budget, double flatFourth, double restFourth) {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** From here on rectangles rule the result, and Student's factor would be too wide. */
    private static final double RULED_BY_RECTANGLES = 0.25;

    private static final int HALVINGS = 60;
    private static final double LEAST_REST = 1e-12;
    private static final double MOST_DEVIATIONS = 5;

    /**
     * The coverage factor: Student's for the effective degrees of freedom (JCGM 100, G.4), unless rectangles rule. A reading
     * of a level by eye, say, has hard ends, and twice its standard uncertainty holds it always, not in 95 cases of 100 (JCGM 100,
     * G.1.3 and 6.3.3). Then the rectangles are taken as one with the same fourth cumulant and added to a normal rest, which is widened
     * for its own degrees of freedom.
     */
    double coverage(double level) {
        double u = budget.standardUncertainty();
        double share = flatFourth / (u * u * u * u);
        return share < RULED_BY_RECTANGLES
                ? CoverageFactor.of(level, budget.degreesOfFreedom())
                : ofRectangleAndRest(
                        level, Math.min(1, Math.sqrt(share)), widening(level, u * u * (1 - Math.sqrt(share))));
    }

    private double widening(double level, double restVariance) {
        if (restFourth == 0 || restVariance <= 0) {
            return 1;
        }
        double freedom = Math.max(1, restVariance * restVariance / restFourth);
        return CoverageFactor.of(level, freedom) / CoverageFactor.of(level, Double.POSITIVE_INFINITY);
    }

    /**
     * Half the width of the interval that holds the sum of a rectangle and a normal rest, the standard deviation of the sum being 1.
     *
     * @param rectangleVariance of the rectangle, at most 1
     * @param widening factor of the rest's standard deviation
     */
    static double ofRectangleAndRest(double level, double rectangleVariance, double widening) {
        double half = Math.sqrt(3 * rectangleVariance);
        double rest = widening * Math.sqrt(Math.max(LEAST_REST, 1 - rectangleVariance));
        double low = 0;
        double high = half + MOST_DEVIATIONS * rest;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (2 * below(middle, half, rest) - 1 < level) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Chance that rectangle and rest together stay below c: the integral of the normal distribution over the rectangle. */
    private static double below(double c, double half, double rest) {
        return rest / (2 * half) * (integral((c + half) / rest) - integral((c - half) / rest));
    }

    private static double integral(double z) {
        return z * NORMAL.cumulativeProbability(z) + NORMAL.density(z);
    }
}
