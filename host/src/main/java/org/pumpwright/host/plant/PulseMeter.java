package org.pumpwright.host.plant;

import java.util.Random;

/**
 * Turns flow into edges. The rotor's angle is counted in blade spacings; each edge comes at its blade's own place
 * (pattern) plus a fresh deviation (jitter), so the deviations never add up over time. Confined to the plant's thread.
 */
public final class PulseMeter {

    /** Deviations beyond this many standard deviations are cut, so that an edge cannot overtake its neighbour. */
    private static final double WIDEST_JITTER = 4;

    private static final double LEAST_SPACING = 0.05;

    private final MeterParameters meter;
    private final double relativeError;
    private final AirSlugs slugs;
    private final Random random;
    private final double[] placeOfBlade;
    private int blade;
    private double deviation;
    private double spacingsToNext;

    public PulseMeter(MeterParameters meter, double relativeError, AirSlugs slugs, Random random) {
        this.meter = meter;
        this.relativeError = relativeError;
        this.slugs = slugs;
        this.random = random;
        placeOfBlade = bladePlaces();
        spacingsToNext = random.nextDouble();
    }

    /** Lets a steady flow pass from {@code begin} for {@code seconds}, adding its edges. */
    public void pass(double flowM3PerSecond, double begin, double seconds, EdgeTimes edges) {
        double factor = slugs.factorAfter(flowM3PerSecond * seconds);
        double rate = meter.pulsesPerSecond(flowM3PerSecond) * (1 + relativeError) * factor;
        double left = rate * seconds;
        while (spacingsToNext <= left) {
            left -= spacingsToNext;
            edges.add(begin + seconds - left / rate);
            spacingsToNext = nextSpacing();
        }
        spacingsToNext -= left;
    }

    private double nextSpacing() {
        blade = (blade + 1) % placeOfBlade.length;
        double jitter = Math.max(-WIDEST_JITTER, Math.min(WIDEST_JITTER, random.nextGaussian()));
        double next = placeOfBlade[blade] + meter.edgeJitterRelative() * jitter;
        double spacing = Math.max(LEAST_SPACING, 1 + next - deviation);
        deviation = next;
        return spacing;
    }

    /** Where each blade sits against even spacing: random, closing on itself, with the pattern's rms spacing error. */
    private double[] bladePlaces() {
        int n = meter.blades();
        double[] spacing = random.doubles(n, -1, 1).toArray();
        double mean = 0;
        for (double s : spacing) {
            mean += s / n;
        }
        double square = 0;
        for (int i = 0; i < n; i++) {
            spacing[i] -= mean;
            square += spacing[i] * spacing[i] / n;
        }
        double scale = square > 0 ? meter.bladePatternRelative() / Math.sqrt(square) : 0;
        double[] places = new double[n];
        for (int i = 1; i < n; i++) {
            places[i] = places[i - 1] + scale * spacing[i];
        }
        return places;
    }
}
