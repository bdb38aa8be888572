package org.pumpwright.benchmarks.judgement;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Where a quantity that begins below a value first reaches it. Thread-safe. */
final class Crossing {
    private static final int STEPS = 40;
    private static final int HALVINGS = 30;

    private Crossing() {}

    /** The way to the value; empty when the quantity begins above it, or never reaches it. */
    static OptionalDouble of(DoubleUnaryOperator quantity, double value, double most) {
        double below = 0;
        if (!(quantity.applyAsDouble(0) < value)) {
            return OptionalDouble.empty();
        }
        for (int i = 1; i <= STEPS; i++) {
            double way = most * i / STEPS;
            if (quantity.applyAsDouble(way) >= value) {
                return OptionalDouble.of(between(quantity, value, below, way));
            }
            below = way;
        }
        return OptionalDouble.empty();
    }

    private static double between(DoubleUnaryOperator quantity, double value, double below, double above) {
        double low = below;
        double high = above;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (quantity.applyAsDouble(middle) >= value) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }
}
