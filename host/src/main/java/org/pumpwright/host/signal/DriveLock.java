package org.pumpwright.host.signal;

/**
 * Whether edges keep step with the pump drive's switching: then they are its interference and no flow. Thread-safe.
 */
final class DriveLock {
    private static final int HARMONICS = 3;

    /** Edges fewer than one in this many switchings are told by chance too easily. */
    private static final double MOST_PERIODS = 4.5;

    private DriveLock() {}

    /**
     * Length of the mean unit vector of the edges' phases within the drive's period or a part of it (circular statistics,
     * textbook), 0 to 1: 1 in step, about {@code 1/sqrt(n)} out of it. The best of the first three harmonics.
     */
    static double coherence(double[] edgeSeconds, double driveHertz) {
        int n = edgeSeconds.length;
        double interval = (edgeSeconds[n - 1] - edgeSeconds[0]) / (n - 1);
        double best = 0;
        for (int harmonic = 1; harmonic <= HARMONICS; harmonic++) {
            if (interval * driveHertz <= MOST_PERIODS) {
                best = Math.max(best, coherenceAt(edgeSeconds, driveHertz * harmonic));
            }
        }
        return best;
    }

    private static double coherenceAt(double[] edgeSeconds, double hertz) {
        double cosines = 0;
        double sines = 0;
        for (double seconds : edgeSeconds) {
            double phase = 2 * Math.PI * hertz * (seconds - edgeSeconds[0]);
            cosines += Math.cos(phase);
            sines += Math.sin(phase);
        }
        return Math.hypot(cosines, sines) / edgeSeconds.length;
    }
}
