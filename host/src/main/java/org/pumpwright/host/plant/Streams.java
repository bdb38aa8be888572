package org.pumpwright.host.plant;

import java.util.Random;

/**
 * Independent random streams from one seed. {@link Random} is used because its algorithm is written down for every
 * Java version; neighbouring seeds are mixed first, because its first draws from them are alike. Thread-safe.
 */
public final class Streams {

    /** Streams below 0 have a fixed use, so that a unit, its sensors and its run may share one seed. */
    public static final long SENSORS = -1;

    public static final long CONTACT = -2;
    public static final long SLUGS = -3;
    public static final long PULSES = -4;
    public static final long NOISE = -5;

    private static final long GOLDEN_STEP = 0x9E3779B97F4A7C15L;

    private Streams() {}

    /** The stream of a seed with the given number; from 0 up they belong to the units of a population. */
    public static Random stream(long seed, long number) {
        return new Random(mix(mix(seed) + number * GOLDEN_STEP));
    }

    /** Finaliser of the SplitMix64 generator (Steele, Lea, Flood 2014, from memory): spreads every bit over all. */
    private static long mix(long value) {
        long z = value + GOLDEN_STEP;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
