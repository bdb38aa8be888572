package org.pumpwright.host.calibrate;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Mean, scatter and range of what the runs at a flow gave. */
record Means(double mean, double deviation, double least, double most, int count) {
    static Means of(List<RunResult> runs, ToDoubleFunction<RunResult> what) {
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (RunResult run : runs) {
            double value = what.applyAsDouble(run);
            sum += value;
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        double mean = sum / runs.size();
        double squares = 0;
        for (RunResult run : runs) {
            double off = what.applyAsDouble(run) - mean;
            squares += off * off;
        }
        double deviation = runs.size() < 2 ? 0 : Math.sqrt(squares / (runs.size() - 1));
        return new Means(mean, deviation, least, most, runs.size());
    }
}
