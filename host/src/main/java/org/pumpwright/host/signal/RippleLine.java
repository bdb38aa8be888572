package org.pumpwright.host.signal;

import java.util.Arrays;
import java.util.List;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * One line of the ripple of a current or pressure: its amplitude by a single Fourier sum under a Hann window. The noise is
 * read from the lines 3 to 6 away on either side; their median, which a stray line does not move, is ln 2 of the mean power
 * (exponential distribution). A revolution frequency that is off by {@code d} lines lowers the amplitude by
 * {@code 1 - sinc(d)/(1 - d^2)} (Hann, textbook); that is taken as a further standard uncertainty. Thread-safe.
 *
 * @param hertz where
 * @param amplitude peak value of the sinusoid, in the unit of the samples
 */
public record RippleLine(double hertz, Uncertain amplitude) {
    private static final int NEAREST = 3;
    private static final int FARTHEST = 6;

    /** Eight lines of two parts, neighbours under a Hann window sharing about half: common practice, no source. */
    private static final double NOISE_DOF = 8;

    private static final double CLEAR = 3;
    private static final double MOST_OF_NYQUIST = 0.9;

    /** True when the line stands out of the noise by three standard uncertainties. */
    public boolean clear() {
        return amplitude.value() > CLEAR * amplitude.standardUncertainty();
    }

    /**
     * The lines at one and at N times the revolution frequency, for a pump of N chambers.
     *
     * @param samples evenly sampled
     * @param sampleHertz samples a second
     * @param revolutionHertz revolutions a second
     * @param chambers N, 2 to 12
     * @throws IllegalArgumentException when a line lies below 3 lines from 0 or above 0.45 of the sample rate
     */
    public static List<RippleLine> ofRevolution(
            double[] samples, double sampleHertz, Uncertain revolutionHertz, int chambers) {
        Require.inRange("chambers", chambers, 2, 12, "");
        return List.of(
                of(samples, sampleHertz, revolutionHertz), of(samples, sampleHertz, revolutionHertz.times(chambers)));
    }

    /** The line at this frequency; as {@link #ofRevolution}. */
    public static RippleLine of(double[] samples, double sampleHertz, Uncertain lineHertz) {
        Require.inRange("sample rate", sampleHertz, 1e-3, 1e9, "Hz");
        double width = sampleHertz / Math.max(1, samples.length);
        double hertz = Require.inRange(
                "line frequency", lineHertz.value(), NEAREST * width, MOST_OF_NYQUIST * sampleHertz / 2, "Hz");
        double mean = Statistics.mean(samples);
        Spectrum spectrum =
                Spectrum.hann(Arrays.stream(samples).map(s -> s - mean).toArray(), 1 / sampleHertz);
        double amplitude = spectrum.amplitude(hertz);
        double lowered = amplitude * (1 - hann(lineHertz.standardUncertainty() / width));
        Uncertain found = new Uncertain(amplitude, noise(spectrum, hertz, width), NOISE_DOF)
                .with(lowered, Double.POSITIVE_INFINITY);
        return new RippleLine(hertz, found);
    }

    private static double noise(Spectrum spectrum, double hertz, double width) {
        double[] powers = new double[2 * (FARTHEST - NEAREST + 1)];
        int kept = 0;
        for (int away = NEAREST; away <= FARTHEST; away++) {
            for (double side : new double[] {-1, 1}) {
                double there = hertz + side * away * width;
                if (there > 2 * width) {
                    powers[kept++] = Math.pow(spectrum.amplitude(there), 2);
                }
            }
        }
        double[] sorted = Arrays.copyOf(powers, kept);
        Arrays.sort(sorted);
        double median = (sorted[kept / 2] + sorted[(kept - 1) / 2]) / 2;
        return Math.sqrt(median / Math.log(2) / 2);
    }

    private static double hann(double lines) {
        if (lines < 1e-6) {
            return 1;
        }
        double x = Math.PI * Math.min(lines, 1.5);
        double d = x / Math.PI;
        return Math.abs(d - 1) < 1e-6 ? 0.5 : Math.sin(x) / x / (1 - d * d);
    }
}
