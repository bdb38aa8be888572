package org.pumpwright.host.signal;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * The mark that each blade (or magnet) of a rotor leaves once a revolution: values whose numbers agree modulo the blade
 * count share a mean of their own. One-way analysis of variance (textbook; the blade is the group). Thread-safe.
 *
 * @param blades pulses a revolution; 1 where no pattern can be told from scatter
 * @param deviation standard deviation of the blades' own means, what scatter alone would give taken out; 0 or more, in
 *     the unit of the values
 */
public record BladePattern(int blades, double deviation) {
    /** No pattern: all blades alike. */
    public static final BladePattern NONE = new BladePattern(1, 0);

    private static final int MOST_BLADES = 12;

    /** Revolutions that must be seen before a pattern is believed. */
    private static final int LEAST_REVOLUTIONS = 4;

    /** Chance of seeing a pattern where there is none, over all the blade counts tried. */
    private static final double FALSE_ALARM = 1e-3;

    /**
     * The blade count that explains the values best, by the Bayesian information criterion (Schwarz 1978), if an F test
     * agrees that it explains anything.
     *
     * @param numbers edge numbers, whole
     * @param values one for each number, without trend
     */
    public static BladePattern detect(double[] numbers, double[] values) {
        return detect(numbers, values, MOST_BLADES);
    }

    /** As {@link #detect(double[], double[])}, for rotors of at most this many blades. */
    public static BladePattern detect(double[] numbers, double[] values, int mostBlades) {
        int n = values.length;
        double least = squares(without(numbers, values, 1));
        int best = 1;
        double leastCriterion = n * Math.log(least);
        for (int blades = 2; blades <= mostBlades && n >= LEAST_REVOLUTIONS * blades; blades++) {
            double within = squares(without(numbers, values, blades));
            double criterion = n * Math.log(within) + (blades - 1) * Math.log(n);
            if (criterion < leastCriterion) {
                leastCriterion = criterion;
                best = blades;
            }
        }
        return best == 1 ? NONE : tested(numbers, values, best, mostBlades);
    }

    private static BladePattern tested(double[] numbers, double[] values, int blades, int mostBlades) {
        int n = values.length;
        double within = squares(without(numbers, values, blades)) / (n - blades);
        double between = (squares(without(numbers, values, 1)) - within * (n - blades)) / (blades - 1);
        double chance = 1 - new FDistribution(blades - 1, n - blades).cumulativeProbability(between / within);
        if (!(chance < FALSE_ALARM / (mostBlades - 1))) {
            return NONE;
        }
        double variance = (between - within) * (blades - 1) / n;
        return new BladePattern(blades, Math.sqrt(Math.max(0, variance)));
    }

    /** The values with the mean of their own blade taken off; with 1 blade, with their mean taken off. */
    static double[] without(double[] numbers, double[] values, int blades) {
        double[] sums = new double[blades];
        int[] counts = new int[blades];
        for (int i = 0; i < values.length; i++) {
            int blade = blade(numbers[i], blades);
            sums[blade] += values[i];
            counts[blade]++;
        }
        double[] rest = new double[values.length];
        Arrays.setAll(rest, i -> {
            int blade = blade(numbers[i], blades);
            return values[i] - sums[blade] / counts[blade];
        });
        return rest;
    }

    /** How many of the blades these numbers touch. */
    static int touched(double[] numbers, int blades) {
        return (int)
                Arrays.stream(numbers).map(n -> blade(n, blades)).distinct().count();
    }

    private static int blade(double number, int blades) {
        return (int) ((long) number % blades);
    }

    private static double squares(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return sum;
    }
}
