package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.Optional;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.Surge;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;

/**
 * How the pressure swings at the highest flow; the flow itself where the pressure is too small or not measured. Thread-safe.
 */
final class SurgeFinding {
    /** A pressure counts as sure when it is this many times its uncertainty, as for the nozzle. */
    private static final double SURE_PRESSURE = 20;

    private static final double LEAST_SECONDS = 2;
    private static final double MOST_SAMPLE_SECONDS = 0.1;
    private static final double EVEN_SHARE = 0.25;

    private SurgeFinding() {}

    /** Empty where the window is too short, or the flow gives less than a pulse a sample and there is no pressure. */
    static Optional<Finding> of(String step, Window window) {
        double sample = window.seconds() / (window.size() - 1);
        if (window.seconds() < LEAST_SECONDS + sample || sample > MOST_SAMPLE_SECONDS) {
            return Optional.empty();
        }
        if (!even(window.times(), sample)) {
            return Optional.of(Finding.word(step, "surge", "not measured", "samples were lost"));
        }
        Optional<AnalogChannel> pressure = window.channels()
                .analog(ChannelRole.OUTLET_PRESSURE)
                .filter(channel -> sure(window.required(ChannelRole.OUTLET_PRESSURE)));
        return pressure.map(window::values)
                .map(values -> finding(step, "surge of the pressure", Surge.of(values, sample)))
                .or(() -> flows(window).map(values -> finding(step, "surge of the flow", Surge.of(values, sample))));
    }

    private static boolean sure(Uncertain pressure) {
        return pressure.value() > SURE_PRESSURE * pressure.standardUncertainty();
    }

    private static boolean even(double[] times, double sample) {
        for (int i = 1; i < times.length; i++) {
            if (Math.abs(times[i] - times[i - 1] - sample) > EVEN_SHARE * sample) {
                return false;
            }
        }
        return true;
    }

    /** Pulses a second from sample to sample; empty where a sample brought none. */
    private static Optional<double[]> flows(Window window) {
        int meter = window.channels().flowMeter().index();
        long[] edges = window.edges(meter);
        double[] lastEdges = window.lastEdges(meter);
        double[] hertz = new double[edges.length - 1];
        for (int i = 0; i < hertz.length; i++) {
            if (edges[i + 1] == edges[i]) {
                return Optional.empty();
            }
            hertz[i] = (edges[i + 1] - edges[i]) / (lastEdges[i + 1] - lastEdges[i]);
        }
        return Optional.of(hertz);
    }

    /**
     * The band holds scatter too. A swing is smaller than its band by anything from nothing to what scatter alone would
     * show, and without a swing by anything up to the whole: rectangular (JCGM 100, 4.3.7).
     */
    private static Finding finding(String step, String name, Surge surge) {
        Uncertain band = surge.peakToPeakShare();
        boolean swings = surge.shape() != Surge.Shape.NONE;
        double doubt = swings ? Math.min(surge.noiseShare(), band.value()) : band.value();
        Uncertain value = new Uncertain(
                        band.value() - doubt / 2, swings ? band.standardUncertainty() : 0, band.degreesOfFreedom())
                .with(doubt / Math.sqrt(12), Double.POSITIVE_INFINITY);
        String note = swings
                ? format(
                        "peak to peak over mean, at the highest flow, %s of %.2f Hz",
                        surge.shape() == Surge.Shape.WAVE ? "a wave" : "a square wave",
                        surge.hertz().value())
                : "peak to peak over mean, at the highest flow; no more than scatter would show";
        return Finding.figure(step, name, value, FindingUnit.SHARE, note);
    }
}
