package org.pumpwright.host.curve;

import java.util.SplittableRandom;

/**
 * Standard normal numbers by Marsaglia's polar method. The same seed gives the same numbers on every machine. Confined to one
 * thread.
 */
final class NormalDraws {
    private final SplittableRandom random;
    private double spare = Double.NaN;

    NormalDraws(long seed) {
        random = new SplittableRandom(seed);
    }

    double next() {
        if (!Double.isNaN(spare)) {
            double kept = spare;
            spare = Double.NaN;
            return kept;
        }
        while (true) {
            double u = 2 * random.nextDouble() - 1;
            double v = 2 * random.nextDouble() - 1;
            double square = u * u + v * v;
            if (square < 1 && square > 0) {
                double radius = StrictMath.sqrt(-2 * StrictMath.log(square) / square);
                spare = v * radius;
                return u * radius;
            }
        }
    }
}
