package org.pumpwright.host.calibrate;

import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * A diverter's timing from long and short runs at one flow. Counting that lasts longer than catching by the same time at each
 * run makes K of a short run too large by a larger share: {@code N/V = K (1 + d/t)}. The result is the excess d with its standard
 * uncertainty from the scatter of both sets of runs. Adjust the switch until d is no more than its uncertainty; what is left goes
 * into {@link Timing}. Thread-safe.
 */
public final class DiverterTrial {
    private DiverterTrial() {}

    /**
     * The excess of counting, seconds.
     *
     * @param longRuns K by pulses over volume, not corrected, of the long runs; any unit
     * @param longSeconds mean length of those
     * @param shortRuns the same of the short runs
     * @param shortSeconds less than half of the long ones
     * @throws IllegalArgumentException with fewer than three runs of a sort, or lengths too near to each other
     */
    public static Uncertain excessSeconds(
            double[] longRuns, double longSeconds, double[] shortRuns, double shortSeconds) {
        Require.inRange("long runs", longRuns.length, 3, 1000, "");
        Require.inRange("short runs", shortRuns.length, 3, 1000, "");
        Require.inRange("length of the short runs", shortSeconds, 0.1, longSeconds / 2, "s");
        double ratio = mean(shortRuns) / mean(longRuns);
        double divisor = 1 / shortSeconds - ratio / longSeconds;
        double excess = (ratio - 1) / divisor;
        double perRatio = (1 + excess / longSeconds) / divisor;
        return new Uncertain(excess, 0, Double.POSITIVE_INFINITY)
                .with(Math.abs(perRatio) * ratio * relativeOfMean(shortRuns), shortRuns.length - 1.0)
                .with(Math.abs(perRatio) * ratio * relativeOfMean(longRuns), longRuns.length - 1.0);
    }

    /** The mean excess left over as a half-width of one switch, for {@link Timing}: what was found and its uncertainty. */
    public static double switchHalfWidthSeconds(Uncertain excess) {
        double both = Math.hypot(Math.abs(excess.value()), excess.standardUncertainty());
        return both * Math.sqrt(3) / Math.sqrt(2);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += Require.inRange("K of a run", value, Double.MIN_NORMAL, 1e12, "");
        }
        return sum / values.length;
    }

    private static double relativeOfMean(double[] values) {
        double mean = mean(values);
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / (values.length - 1) / values.length) / mean;
    }
}
