package org.pumpwright.host.plant;

import java.util.Random;

/**
 * How slugs of air speed the meter's rotor up and down: a factor about 1 that stays alike over a volume of liquid
 * (first-order autoregressive in volume), so that neighbouring pulse intervals are alike. Mean 1: what the slugs change
 * in the count on average is part of the air fraction. Confined to the plant's thread.
 */
public final class AirSlugs {

    /** 15 % air gives about 10 % variation of the pulse interval (assumed). */
    private static final double VARIATION_PER_AIR = 2.0 / 3.0;

    private static final double LEAST_FACTOR = 0.1;

    private double variation;
    private final double volumeM3;
    private final Random random;
    private double state;

    public AirSlugs(double airFraction, double volumeM3, Random random) {
        variation = VARIATION_PER_AIR * airFraction;
        this.volumeM3 = volumeM3;
        this.random = random;
        state = random.nextGaussian();
    }

    /** Lets the air fraction change, as it does while hoses purge. */
    void become(double airFraction) {
        variation = VARIATION_PER_AIR * airFraction;
    }

    /** The factor after another volume has passed. */
    public double factorAfter(double passedM3) {
        if (variation == 0) {
            return 1;
        }
        double kept = StrictMath.exp(-passedM3 / volumeM3);
        state = kept * state + Math.sqrt(1 - kept * kept) * random.nextGaussian();
        return Math.max(LEAST_FACTOR, 1 + variation * state);
    }
}
