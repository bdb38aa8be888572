package org.pumpwright.host.grade.finding;

import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Sample;

/** The step of a channel's converter, as its readings tell it. Thread-safe. */
final class ConverterStep {
    private static final double DITHERED_STEPS = 0.5;

    private ConverterStep() {}

    /**
     * The step in the channel's SI unit: the largest code of which all readings are multiples. A channel that never moved
     * tells no step; then it is 0.
     */
    static double of(Window window, AnalogChannel channel) {
        int first = channel.raw(window.samples().get(0));
        int step = 0;
        for (Sample sample : window.samples()) {
            step = greatestCommonDivisor(step, Math.abs(channel.raw(sample) - first));
        }
        return Math.abs(channel.calibration().siPerCode(first)) * step;
    }

    /** The step where the readings scatter too little to average it out, otherwise 0. */
    static double stuck(Window window, AnalogChannel channel) {
        double step = of(window, channel);
        double scatter = Statistics.deviation(window.values(channel));
        return scatter < DITHERED_STEPS * step ? step : 0;
    }

    private static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
}
