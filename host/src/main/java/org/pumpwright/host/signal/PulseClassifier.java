package org.pumpwright.host.signal;

import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import org.pumpwright.host.quantity.Require;

/**
 * Names what a pulse train looks like. The rules, in order, the first that holds decides:
 *
 * <ol>
 *   <li>edges in step with the drive's switching or its harmonics: interference;
 *   <li>long intervals (above 1.6 times the median), equally spaced: a blade lost, otherwise pulses missing;
 *   <li>short intervals (below half the median): double pulses;
 *   <li>what is left without trend and blade pattern wanders alike (lag-one above 0.3, more than 2.5 %): air or surge; one
 *       sinusoid that explains most of it is surge alone;
 *   <li>uneven by more than 4.5 %: worn bearing;
 *   <li>else healthy.
 * </ol>
 *
 * The limits are common practice or set on simulated trains, no source. Thread-safe.
 */
public final class PulseClassifier {
    /** Fewer intervals say nothing. */
    public static final int LEAST_INTERVALS = 100;

    private static final double LEAST_ODD_SHARE = 0.005;
    private static final double LEAST_ODD = 1.5;
    private static final double IN_STEP = 0.7;
    private static final double SAME_SPACING = 0.8;
    private static final int LEAST_LOST = 5;
    private static final int MOST_BLADES = 8;
    private static final double MOST_HEALTHY_VARIATION = 0.045;
    private static final double SURGE_SHARE = 0.6;
    private static final double ALIKE_VARIATION = PulseHealth.MOST_VARIATION;
    private static final double ALIKE = PulseHealth.MOST_LAG_ONE;

    /** Intervals that take turns as one blade in 4 to 8 lost makes them: variation (p-1)^0.5/(p+1), p = 3 to 7. */
    private static final double LEAST_LOST_VARIATION = 0.27;

    private static final double MOST_LOST_VARIATION = 0.42;
    private static final double MOST_LOST_LAG = -0.09;
    private static final double LEAST_LONG_OF_WINDOW = 1.5;
    private static final double[] DRIVE_HARMONICS = {0.5, 1, 2, 3};
    private static final double OFF_WHOLE = 0.1;

    /** Intervals with two pulses missing count as one: 5 % missing make 0.25 %. */
    private static final double MOST_MISSING_TWICE = 0.006;

    private PulseClassifier() {}

    /**
     * From every edge.
     *
     * @param edgeSeconds times of the edges, growing, s
     * @param driveHertz switching frequency of the pump drive on the same clock, where there is one, good to a tenth of a
     *     period over the train
     */
    public static PulseDiagnosis of(double[] edgeSeconds, OptionalDouble driveHertz) {
        int n = edgeSeconds.length - 1;
        if (n < LEAST_INTERVALS) {
            return tooFew(Math.max(0, n));
        }
        double[] intervals = new double[n];
        Arrays.setAll(intervals, i -> edgeSeconds[i + 1] - edgeSeconds[i]);
        if (driveHertz.isPresent()) {
            double inStep = DriveLock.coherence(
                    edgeSeconds, Require.inRange("drive frequency", driveHertz.getAsDouble(), 1, 1e6, "Hz"));
            if (inStep >= IN_STEP) {
                return one(PulseFault.INTERFERENCE, "edges in step with the drive by %.2f of 1", inStep);
            }
        }
        IntervalStatistics statistics = IntervalStatistics.of(intervals);
        double leastOdd = Math.max(LEAST_ODD / n, LEAST_ODD_SHARE);
        if (statistics.longShare() > leastOdd && statistics.longShare() >= statistics.shortShare()) {
            return longIntervals(intervals, statistics);
        }
        if (statistics.shortShare() > leastOdd) {
            return one(
                    PulseFault.DOUBLE_PULSES,
                    "%.1f %% of the intervals are below half the median",
                    statistics.shortShare() * 100);
        }
        return unevenness(edgeSeconds, intervals);
    }

    private static PulseDiagnosis longIntervals(double[] intervals, IntervalStatistics statistics) {
        LongIntervals found = LongIntervals.of(intervals);
        double share = statistics.longShare() * 100;
        if (found.count() >= LEAST_LOST && found.sameSpacing() >= SAME_SPACING) {
            return one(
                    PulseFault.BLADE_LOST,
                    "every %d. interval is long: one of %d pulses a revolution is lost",
                    found.spacing(),
                    found.spacing() + 1);
        }
        return one(PulseFault.MISSING_PULSES, "%.1f %% of the intervals are long, not in turn", share);
    }

    private static PulseDiagnosis unevenness(double[] edgeSeconds, double[] intervals) {
        double[] order = new double[intervals.length];
        Arrays.setAll(order, i -> i);
        double[] trendless = LineFit.of(order, intervals).residuals();
        double mean = Statistics.mean(intervals);
        BladePattern pattern = BladePattern.detect(order, trendless, MOST_BLADES);
        double[] rest = BladePattern.without(order, trendless, pattern.blades());
        double left = Statistics.deviation(rest) / mean;
        double alike = Statistics.lagOne(rest);
        if (left > ALIKE_VARIATION && alike > ALIKE) {
            return airOrSurge(edgeSeconds, rest, left, alike);
        }
        double all = Statistics.deviation(trendless) / mean;
        PulseFault fault = all > MOST_HEALTHY_VARIATION ? PulseFault.WORN_BEARING : PulseFault.HEALTHY;
        return one(
                fault,
                "intervals uneven by %.1f %%, %.1f %% of it the pattern of %d blades",
                all * 100,
                pattern.deviation() / mean * 100,
                pattern.blades());
    }

    private static PulseDiagnosis airOrSurge(double[] edgeSeconds, double[] rest, double left, double alike) {
        double line = SteadyLine.share(edgeSeconds, rest);
        String words = "intervals wander alike by %.1f %%, lag-one %+.2f, %.0f %% of it one sinusoid";
        return line >= SURGE_SHARE
                ? one(PulseFault.SURGE, words, left * 100, alike, line * 100)
                : tie(words, left * 100, alike, line * 100);
    }

    /**
     * From a window's sums alone. A blade pattern cannot be taken out, long and short are told against a mean, and air and
     * surge always tie.
     */
    public static PulseDiagnosis ofWindow(IntervalStatistics window, OptionalDouble driveHertz) {
        if (window.intervals() < LEAST_INTERVALS) {
            return tooFew(window.intervals());
        }
        double variation = window.variation() * 100;
        if (driveHertz.isPresent() && wholePeriods(window, driveHertz.getAsDouble())) {
            return one(
                    PulseFault.INTERFERENCE,
                    "the window holds whole periods of the drive, %.2f Hz a pulse",
                    1 / window.meanSeconds());
        }
        if (takesTurns(window)) {
            return one(
                    PulseFault.BLADE_LOST,
                    "intervals uneven by %.1f %%, in turn (lag-one %+.2f)",
                    variation,
                    window.lagOne());
        }
        double leastOdd = Math.max(LEAST_ODD / window.intervals(), LEAST_ODD_SHARE);
        if (window.longShare() > leastOdd && window.longShare() >= window.shortShare()) {
            return one(PulseFault.MISSING_PULSES, "%.1f %% of the intervals are long", window.longShare() * 100);
        }
        if (window.shortShare() > leastOdd) {
            return one(PulseFault.DOUBLE_PULSES, "%.1f %% of the intervals are short", window.shortShare() * 100);
        }
        if (window.variation() > ALIKE_VARIATION && window.lagOne() > ALIKE) {
            return tie("intervals wander alike by %.1f %%, lag-one %+.2f", variation, window.lagOne());
        }
        PulseFault fault = window.variation() > MOST_HEALTHY_VARIATION ? PulseFault.WORN_BEARING : PulseFault.HEALTHY;
        return one(fault, "intervals uneven by %.1f %%, lag-one %+.2f", variation, window.lagOne());
    }

    private static boolean takesTurns(IntervalStatistics window) {
        return window.variation() > LEAST_LOST_VARIATION
                && window.variation() < MOST_LOST_VARIATION
                && window.lagOne() < MOST_LOST_LAG
                && window.mostOverMean() > LEAST_LONG_OF_WINDOW;
    }

    /**
     * Whether first and last edge are a whole number of the drive's periods (or of its harmonics') apart, and as many as
     * there are pulses, those missing in long intervals counted along.
     */
    private static boolean wholePeriods(IntervalStatistics window, double driveHertz) {
        double pulses = window.intervals() * (1 + window.longShare());
        for (double harmonic : DRIVE_HARMONICS) {
            double periods = window.meanSeconds() * window.intervals() * driveHertz * harmonic;
            double whole = Math.rint(periods);
            boolean asMany = whole >= pulses - 0.5 && whole <= pulses * (1 + MOST_MISSING_TWICE);
            if (asMany && Math.abs(periods - whole) < OFF_WHOLE) {
                return true;
            }
        }
        return false;
    }

    private static PulseDiagnosis tooFew(int intervals) {
        return new PulseDiagnosis(
                Set.of(), "%d intervals, at least %d are needed to judge".formatted(intervals, LEAST_INTERVALS));
    }

    private static PulseDiagnosis one(PulseFault fault, String words, Object... figures) {
        return new PulseDiagnosis(Set.of(fault), String.format(Locale.ROOT, words, figures));
    }

    private static PulseDiagnosis tie(String words, Object... figures) {
        return new PulseDiagnosis(
                Set.of(PulseFault.AIR_SLUGS, PulseFault.SURGE), String.format(Locale.ROOT, words, figures));
    }
}
