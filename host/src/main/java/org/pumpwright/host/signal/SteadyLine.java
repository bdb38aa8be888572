package org.pumpwright.host.signal;

/** How much of what wanders in a pulse train is one slow sinusoid. Thread-safe. */
final class SteadyLine {
    private static final double LEAST_HERTZ = 0.1;
    private static final double MOST_HERTZ = 5;
    private static final int STEPS_PER_CYCLE = 4;

    private SteadyLine() {}

    /** Largest share of the variance in a single frequency from 0.1 to 5 Hz, 0 to 1 (Schuster's periodogram). */
    static double share(double[] edgeSeconds, double[] values) {
        int n = values.length;
        double length = edgeSeconds[n] - edgeSeconds[0];
        double squares = 0;
        for (double value : values) {
            squares += value * value;
        }
        double step = 1 / (STEPS_PER_CYCLE * length);
        double most = Math.min(MOST_HERTZ, n / (2 * length));
        Turning turning = new Turning(edgeSeconds, values, Math.max(LEAST_HERTZ, 1 / length), step);
        double best = 0;
        for (double hertz = Math.max(LEAST_HERTZ, 1 / length); hertz <= most; hertz += step) {
            best = Math.max(best, 2 * turning.power() / (n * squares));
            turning.turn();
        }
        return Math.min(1, best);
    }

    /** A pointer for each value, turned on from frequency to frequency: no sine is computed twice. */
    private static final class Turning {
        private final double[] cosines;
        private final double[] sines;
        private final double[] stepCosines;
        private final double[] stepSines;

        Turning(double[] edgeSeconds, double[] values, double hertz, double stepHertz) {
            int n = values.length;
            cosines = new double[n];
            sines = new double[n];
            stepCosines = new double[n];
            stepSines = new double[n];
            for (int i = 0; i < n; i++) {
                double turns = 2 * Math.PI * (edgeSeconds[i] - edgeSeconds[0]);
                cosines[i] = values[i] * Math.cos(turns * hertz);
                sines[i] = values[i] * Math.sin(turns * hertz);
                stepCosines[i] = Math.cos(turns * stepHertz);
                stepSines[i] = Math.sin(turns * stepHertz);
            }
        }

        double power() {
            double sumCosines = 0;
            double sumSines = 0;
            for (int i = 0; i < cosines.length; i++) {
                sumCosines += cosines[i];
                sumSines += sines[i];
            }
            return sumCosines * sumCosines + sumSines * sumSines;
        }

        void turn() {
            for (int i = 0; i < cosines.length; i++) {
                double cosine = cosines[i] * stepCosines[i] - sines[i] * stepSines[i];
                sines[i] = sines[i] * stepCosines[i] + cosines[i] * stepSines[i];
                cosines[i] = cosine;
            }
        }
    }
}
