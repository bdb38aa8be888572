package org.pumpwright.host.signal;

import java.util.Arrays;

/**
 * Single lines of an evenly sampled series, without a transform of the whole: the discrete Fourier sum at any frequency,
 * under a Hann window or none (Harris 1978 for the windows). Confined to one thread.
 */
final class Spectrum {
    private final double[] values;
    private final double sampleSeconds;
    private final double[] window;
    private final double windowSum;

    private Spectrum(double[] values, double sampleSeconds, double[] window) {
        this.values = values;
        this.sampleSeconds = sampleSeconds;
        this.window = window;
        windowSum = Arrays.stream(window).sum();
    }

    /** Under a Hann window, which keeps strong neighbours out. The values should have no mean. */
    static Spectrum hann(double[] values, double sampleSeconds) {
        double[] window = new double[values.length];
        Arrays.setAll(window, i -> Math.pow(Math.sin(Math.PI * (i + 0.5) / values.length), 2));
        return new Spectrum(values, sampleSeconds, window);
    }

    /** Without a window. */
    static Spectrum plain(double[] values, double sampleSeconds) {
        double[] window = new double[values.length];
        Arrays.fill(window, 1);
        return new Spectrum(values, sampleSeconds, window);
    }

    /** Cosine and sine parts at this frequency, as amplitudes in the unit of the values. */
    double[] parts(double hertz) {
        double cosines = 0;
        double sines = 0;
        double turn = 2 * Math.PI * hertz * sampleSeconds;
        for (int i = 0; i < values.length; i++) {
            cosines += window[i] * values[i] * Math.cos(turn * i);
            sines += window[i] * values[i] * Math.sin(turn * i);
        }
        return new double[] {2 * cosines / windowSum, 2 * sines / windowSum};
    }

    /** Amplitude at this frequency, in the unit of the values. */
    double amplitude(double hertz) {
        double[] parts = parts(hertz);
        return Math.hypot(parts[0], parts[1]);
    }

    /** Frequency of the highest amplitude between two frequencies, by a scan of quarter lines and a parabola through it. */
    double highest(double fromHertz, double toHertz) {
        double step = 1 / (4 * sampleSeconds * values.length);
        double best = fromHertz;
        double most = -1;
        for (double hertz = fromHertz; hertz <= toHertz; hertz += step) {
            double here = amplitude(hertz);
            if (here > most) {
                most = here;
                best = hertz;
            }
        }
        double below = amplitude(best - step);
        double above = amplitude(best + step);
        double bend = below - 2 * most + above;
        double shift = bend < 0 ? 0.5 * (below - above) / bend : 0;
        return Math.max(fromHertz, Math.min(toHertz, best + step * Math.max(-1, Math.min(1, shift))));
    }
}
