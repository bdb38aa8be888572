package org.pumpwright.host.calibrate;

import org.pumpwright.host.quantity.Require;

/**
 * How far the runs at a flow may lie apart. The limit is for the range of five runs; for another number it goes with the expected
 * range of so many normal readings (d2 of the control charts), so that more runs are not held to a tighter rule. Thread-safe.
 *
 * @param limitShare largest allowed range, as a share of the mean
 * @param passed whether the range is within
 */
public record Gate(double limitShare, boolean passed) {
    /**
     * Mean range of n = 2 to 10 normal readings over their standard deviation: ASTM Manual on Presentation of Data and Control
     * Chart Analysis, MNL 7, table 49, from memory and recomputed.
     */
    private static final double[] D2 = {1.128, 1.693, 2.059, 2.326, 2.534, 2.704, 2.847, 2.970, 3.078};

    /** The gate of so many runs whose range is this share of their mean. */
    public static Gate of(Grade grade, int runs, double rangeShare) {
        Require.inRange("runs at one flow", runs, 2, 1000, "");
        double d2 = D2[Math.min(runs, D2.length + 1) - 2];
        double limit = grade.rangeShareOfFive() * d2 / D2[3];
        return new Gate(limit, rangeShare <= limit);
    }
}
