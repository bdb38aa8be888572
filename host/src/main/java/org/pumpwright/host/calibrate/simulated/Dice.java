package org.pumpwright.host.calibrate.simulated;

import java.util.SplittableRandom;

/** Draws from the distributions that a budget speaks of. Confined to one thread. */
final class Dice {
    private final SplittableRandom random;

    Dice(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Anywhere within plus and minus the half-width. */
    double flat(double halfWidth) {
        return halfWidth * (2 * random.nextDouble() - 1);
    }

    /** Normal, by the method of Box and Muller. */
    double normal(double deviation) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
        return deviation * radius * StrictMath.cos(2 * StrictMath.PI * random.nextDouble());
    }

    /** A position within one step, 0 to 1. */
    double phase() {
        return random.nextDouble();
    }
}
