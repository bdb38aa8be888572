package org.pumpwright.host.curve;

import java.util.function.IntToDoubleFunction;

/**
 * Piecewise cubic through given points that rises and falls only where they do: no overshoot between them. Conditions of
 * F. N. Fritsch and R. E. Carlson, SIAM Journal on Numerical Analysis 17 (1980) 238; slopes inside are the weighted harmonic
 * means of F. N. Fritsch and J. Butland, SIAM Journal on Scientific and Statistical Computing 5 (1984) 300 (both cited from
 * memory), at the ends those of the parabola through three points, held to the same conditions. Thread-safe as far as its
 * points are.
 *
 * @param count number of points, at least 2
 * @param x ascending
 * @param y values
 */
record MonotoneCubic(int count, IntToDoubleFunction x, IntToDoubleFunction y) {

    /** The value between the points {@code upper - 1} and {@code upper}, at the share {@code t} of the way. */
    double at(int upper, double t) {
        int lower = upper - 1;
        double width = width(lower);
        double low = y.applyAsDouble(lower);
        double high = y.applyAsDouble(upper);
        double rise = high - low;
        double fromLow = width * slope(lower);
        double fromHigh = width * slope(upper);
        return low + t * (fromLow + t * (3 * rise - 2 * fromLow - fromHigh + t * (fromLow + fromHigh - 2 * rise)));
    }

    private double width(int interval) {
        return x.applyAsDouble(interval + 1) - x.applyAsDouble(interval);
    }

    private double chord(int interval) {
        return (y.applyAsDouble(interval + 1) - y.applyAsDouble(interval)) / width(interval);
    }

    private double slope(int point) {
        if (count == 2) {
            return chord(0);
        }
        if (point == 0) {
            return endSlope(width(0), width(1), chord(0), chord(1));
        }
        if (point == count - 1) {
            return endSlope(width(point - 1), width(point - 2), chord(point - 1), chord(point - 2));
        }
        double before = chord(point - 1);
        double after = chord(point);
        if (before * after <= 0) {
            return 0;
        }
        double weightBefore = 2 * width(point) + width(point - 1);
        double weightAfter = width(point) + 2 * width(point - 1);
        return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
    }

    private static double endSlope(double near, double far, double nearChord, double farChord) {
        double slope = ((2 * near + far) * nearChord - near * farChord) / (near + far);
        if (slope * nearChord <= 0) {
            return 0;
        }
        boolean turns = nearChord * farChord <= 0;
        return turns && Math.abs(slope) > 3 * Math.abs(nearChord) ? 3 * nearChord : slope;
    }
}
