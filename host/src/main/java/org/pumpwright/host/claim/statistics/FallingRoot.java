package org.pumpwright.host.claim.statistics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;

/** The root of a function that falls all the way, or of one side of a hill, bracketed and then found by Brent's method. */
final class FallingRoot {
    private static final double RELATIVE = 1e-13;
    private static final double ABSOLUTE = 1e-13;
    private static final int TRIES = 400;

    private FallingRoot() {}

    /** Where a function falling over (0, infinity) passes nought; steps by doubling and halving from 1. */
    static double abovePositive(DoubleUnaryOperator falling) {
        double low = 1;
        for (int i = 0; i < TRIES && falling.applyAsDouble(low) <= 0; i++) {
            low /= 2;
        }
        double high = 2 * low;
        for (int i = 0; i < TRIES && falling.applyAsDouble(high) > 0; i++) {
            low = high;
            high *= 2;
        }
        return between(falling, low, high);
    }

    /** Where a function that is positive at the start passes nought, walking away from it with steps that double. */
    static double away(DoubleUnaryOperator function, double start, double firstStep) {
        double inside = start;
        double step = firstStep;
        double outside = start + step;
        for (int i = 0; i < TRIES && function.applyAsDouble(outside) > 0; i++) {
            inside = outside;
            step *= 2;
            outside += step;
        }
        return between(function, Math.min(inside, outside), Math.max(inside, outside));
    }

    private static double between(DoubleUnaryOperator function, double low, double high) {
        return new BrentSolver(RELATIVE, ABSOLUTE).solve(TRIES, function::applyAsDouble, low, high);
    }
}
