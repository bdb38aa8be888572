package org.pumpwright.host.calibrate;

import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A run that lies further from the others than chance makes likely, by the test of F. E. Grubbs (Technometrics 11 (1969) 1; ASTM
 * E178), two-sided at 5 %. It is a question to a person and nothing more. Thread-safe.
 *
 * @param run the one furthest from the mean
 * @param statistic its distance from the mean in standard deviations
 * @param critical what the largest of so many exceeds once in twenty times by chance
 */
public record Outlier(RunResult run, double statistic, double critical) {
    private static final double SIGNIFICANCE = 0.05;

    static Optional<Outlier> among(List<RunResult> runs) {
        Means k = Means.of(runs, run -> run.k().pulsesPerM3());
        if (runs.size() < 3 || k.deviation() == 0) {
            return Optional.empty();
        }
        RunResult furthest = runs.get(0);
        for (RunResult run : runs) {
            if (off(run, k) > off(furthest, k)) {
                furthest = run;
            }
        }
        Outlier outlier = new Outlier(furthest, off(furthest, k) / k.deviation(), critical(runs.size()));
        return outlier.statistic > outlier.critical ? Optional.of(outlier) : Optional.empty();
    }

    /** {@code (n-1)/sqrt(n) sqrt(t2 / (n-2+t2))}, t at 5 % / 2n of n - 2 degrees of freedom. */
    static double critical(int n) {
        double t = new TDistribution(n - 2.0).inverseCumulativeProbability(1 - SIGNIFICANCE / (2.0 * n));
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }

    private static double off(RunResult run, Means k) {
        return Math.abs(run.k().pulsesPerM3() - k.mean());
    }
}
