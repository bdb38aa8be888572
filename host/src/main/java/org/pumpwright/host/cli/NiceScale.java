package org.pumpwright.host.cli;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A scale from 0 whose steps are 1, 2 or 5 times a power of ten. Thread-safe.
 *
 * @param step between ticks
 * @param steps how many, so that the end is at or above the largest value
 */
record NiceScale(double step, int steps) {
    private static final double ROUNDING = 1e-9;
    private static final MathContext DIGITS = new MathContext(6);

    /** The scale with at most this many steps. */
    static NiceScale toCover(double largest, int mostSteps) {
        double power = Math.pow(10, Math.floor(Math.log10(largest / mostSteps)));
        double step = power;
        for (double factor : new double[] {1, 2, 5, 10}) {
            step = factor * power;
            if (step * mostSteps >= largest * (1 - ROUNDING)) {
                break;
            }
        }
        return new NiceScale(step, (int) Math.ceil(largest / step - ROUNDING));
    }

    double end() {
        return step * steps;
    }

    double tick(int number) {
        return step * number;
    }

    /** A tick's value without needless digits. */
    String label(int number) {
        return new BigDecimal(tick(number), DIGITS).stripTrailingZeros().toPlainString();
    }
}
