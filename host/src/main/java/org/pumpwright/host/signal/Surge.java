package org.pumpwright.host.signal;

import java.util.Arrays;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * How a settled flow or pressure swings between 0.1 and 5 Hz. The band is cut out by the discrete Fourier sum; what lies
 * outside tells how much scatter there is inside (taken as white). Thread-safe.
 *
 * @param peakToPeakShare highest less lowest of the band over the mean; its standard uncertainty is that of two points
 * @param noiseShare what the scatter alone would show as peak to peak, as a share of the mean
 * @param hertz frequency of the highest line; the uncertainty is the bound for a steady sinusoid in white scatter,
 *     {@code sqrt(6) s / (pi A T sqrt(N))} (Kay, Fundamentals of Statistical Signal Processing, 1993, example 3.14, from
 *     memory), and 0.02 lines for the parabola
 * @param shape what the swing looks like
 */
public record Surge(Uncertain peakToPeakShare, double noiseShare, Uncertain hertz, Shape shape) {
    private static final double LEAST_HERTZ = 0.1;
    private static final double MOST_HERTZ = 5;
    private static final double LEAST_SECONDS = 2;
    private static final double ABOVE_NOISE = 1.3;
    private static final double PARABOLA_LINES = 0.02;
    private static final int TREND_ROUNDS = 6;

    /** Slower or faster, a demand switch does not cycle (common practice, no source). */
    private static final double LEAST_SWITCH_HERTZ = 0.3;

    private static final double MOST_SWITCH_HERTZ = 3;

    /** A sinusoid spends a third of its time in the middle half of its range, a square wave none. */
    private static final double MOST_IN_BETWEEN = 0.2;

    /** What a swing looks like. */
    public enum Shape {
        /** No more than the scatter would show. */
        NONE,
        /** Swings through. */
        WAVE,
        /** Jumps between two levels at 0.3 to 3 Hz, as a demand switch makes it. */
        SQUARE_WAVE
    }

    /**
     * The swing of an evenly sampled series. A swing below one cycle in the series is taken for trend.
     *
     * @param values settled readings in any unit, mean not 0
     * @param sampleSeconds from one to the next, at most 0.1 s
     * @throws IllegalArgumentException when the series is shorter than 2 s, sampled too slowly or has no mean
     */
    public static Surge of(double[] values, double sampleSeconds) {
        int n = values.length;
        Require.inRange("time between samples", sampleSeconds, 1e-6, 1 / (2 * MOST_HERTZ), "s");
        double length = Require.inRange("length of the series", n * sampleSeconds, LEAST_SECONDS, 1e6, "s");
        double mean = Math.abs(Statistics.mean(values));
        Require.inRange("mean of the series", mean, Double.MIN_NORMAL, Double.MAX_VALUE, "");
        int first = Math.max(1, (int) Math.ceil(LEAST_HERTZ * length));
        int last = Math.min((n - 1) / 2, (int) Math.floor(MOST_HERTZ * length));
        double[] trendless = trendless(values, sampleSeconds, first / length, last / length);
        double[] band = band(trendless, sampleSeconds, first, last);
        double scatter = scatterOutside(trendless, band, 2 * (last - first + 1));
        double inBand = scatter * Math.sqrt(2.0 * (last - first + 1) / n);
        double peakToPeak = span(band);
        double noise = 2 * inBand * Math.sqrt(2 * Math.log(2.0 * (last - first + 1)));
        Spectrum spectrum = Spectrum.hann(trendless, sampleSeconds);
        double hertz = spectrum.highest(first / length, last / length);
        double amplitude = Math.max(spectrum.amplitude(hertz), Double.MIN_NORMAL);
        double bound = Math.sqrt(6) * scatter / (Math.PI * amplitude * length * Math.sqrt(n));
        boolean swings = peakToPeak > ABOVE_NOISE * noise && peakToPeak > 0;
        return new Surge(
                Uncertain.of(peakToPeak / mean, Math.sqrt(2) * inBand / mean),
                noise / mean,
                Uncertain.of(hertz, Math.min(MOST_HERTZ, Math.hypot(bound, PARABOLA_LINES / length))),
                swings ? shape(trendless, hertz) : Shape.NONE);
    }

    /**
     * The values without their straight trend. A line fitted through a few cycles leans with them, so line and highest
     * sinusoid are fitted in turn until both hold.
     */
    private static double[] trendless(double[] values, double sampleSeconds, double fromHertz, double toHertz) {
        int n = values.length;
        double[] order = new double[n];
        Arrays.setAll(order, i -> i);
        double[] rest = LineFit.of(order, values).residuals();
        double turn =
                2 * Math.PI * sampleSeconds * Spectrum.hann(rest, sampleSeconds).highest(fromHertz, toHertz);
        for (int round = 0; round < TREND_ROUNDS; round++) {
            double[] parts = Spectrum.plain(rest, sampleSeconds).parts(turn / (2 * Math.PI * sampleSeconds));
            double[] still = new double[n];
            Arrays.setAll(still, i -> values[i] - parts[0] * Math.cos(turn * i) - parts[1] * Math.sin(turn * i));
            LineFit line = LineFit.of(order, still);
            Arrays.setAll(rest, i -> values[i] - line.at(i));
        }
        return rest;
    }

    private static double[] band(double[] values, double sampleSeconds, int first, int last) {
        int n = values.length;
        Spectrum spectrum = Spectrum.plain(values, sampleSeconds);
        double[] band = new double[n];
        for (int line = first; line <= last; line++) {
            double[] parts = spectrum.parts(line / (n * sampleSeconds));
            double turn = 2 * Math.PI * line / n;
            for (int i = 0; i < n; i++) {
                band[i] += parts[0] * Math.cos(turn * i) + parts[1] * Math.sin(turn * i);
            }
        }
        return band;
    }

    private static double scatterOutside(double[] values, double[] band, int used) {
        double squares = 0;
        for (int i = 0; i < values.length; i++) {
            squares += (values[i] - band[i]) * (values[i] - band[i]);
        }
        return Math.sqrt(squares / Math.max(1, values.length - 2 - used));
    }

    private static Shape shape(double[] values, double hertz) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double low = sorted[sorted.length / 20];
        double high = sorted[sorted.length - 1 - sorted.length / 20];
        double quarter = (high - low) / 4;
        long between = Arrays.stream(values)
                .filter(v -> v > low + quarter && v < high - quarter)
                .count();
        boolean square =
                between < MOST_IN_BETWEEN * values.length && hertz >= LEAST_SWITCH_HERTZ && hertz <= MOST_SWITCH_HERTZ;
        return square ? Shape.SQUARE_WAVE : Shape.WAVE;
    }

    private static double span(double[] values) {
        return Arrays.stream(values).max().orElseThrow()
                - Arrays.stream(values).min().orElseThrow();
    }
}
