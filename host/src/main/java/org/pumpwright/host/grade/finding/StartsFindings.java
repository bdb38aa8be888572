package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.Statistics;

/** How many of several starts succeeded, and how soon half of the flow was there. Thread-safe. */
final class StartsFindings {
    private static final double RISK = 0.05;
    private static final int HALVINGS = 60;
    private static final double END_SHARE = 2.0 / 3;
    private static final int LEAST_PULSES = 3;
    private static final int IN_A_ROW = 3;

    private StartsFindings() {}

    static List<Finding> of(FindingInput input, Hold hold) {
        List<Window> times = input.times(hold);
        if (times.isEmpty()) {
            return List.of();
        }
        List<Uncertain> started = new ArrayList<>();
        times.forEach(time -> secondsToRun(time).ifPresent(started::add));
        List<Finding> findings = new ArrayList<>();
        findings.add(Finding.word(
                hold.name(),
                "starts",
                format("%d of %d", started.size(), times.size()),
                format(
                        "with 95 %% confidence at least %.0f %% of such starts succeed",
                        leastShare(started.size(), times.size()) * 100)));
        if (!started.isEmpty()) {
            findings.add(timeToRun(hold, started));
        }
        return findings;
    }

    /**
     * From the command, which came within the sample before the first, until half of the flow at the end was there for three
     * readings in a row; good to a pulse interval either way. What still runs from before is slower. Empty where nothing
     * flows at the end.
     */
    private static Optional<Uncertain> secondsToRun(Window time) {
        int meter = time.channels().flowMeter().index();
        Window end = time.after(time.seconds() * END_SHARE);
        if (end.pulses(meter) < LEAST_PULSES) {
            return Optional.empty();
        }
        double half = end.hertz(meter).value() / 2;
        double sample = time.seconds() / (time.size() - 1);
        long[] edges = time.edges(meter);
        double[] at = time.lastEdges(meter);
        int inARow = 0;
        double begun = 0;
        double interval = 0;
        int before = 0;
        for (int i = 1; i < edges.length && inARow < IN_A_ROW; i++) {
            if (edges[i] == edges[before]) {
                continue;
            }
            double hertz = (edges[i] - edges[before]) / (at[i] - at[before]);
            if (hertz < half) {
                inARow = 0;
            } else if (inARow++ == 0) {
                interval = 1 / hertz;
                begun = Math.max(0, at[before] - interval / 2);
            }
            before = i;
        }
        return inARow < IN_A_ROW
                ? Optional.empty()
                : Optional.of(Uncertain.of(begun, interval / Math.sqrt(3))
                        .with(sample / Math.sqrt(3), Double.POSITIVE_INFINITY));
    }

    private static Finding timeToRun(Hold hold, List<Uncertain> started) {
        double[] seconds = started.stream().mapToDouble(Uncertain::value).toArray();
        double resolution = started.stream()
                .mapToDouble(Uncertain::standardUncertainty)
                .max()
                .orElseThrow();
        Uncertain mean = Statistics.uncertainMean(seconds).with(resolution, Double.POSITIVE_INFINITY);
        double longest = started.stream()
                .max(Comparator.comparingDouble(Uncertain::value))
                .orElseThrow()
                .value();
        return Finding.figure(
                hold.name(),
                "time to run",
                mean,
                FindingUnit.SECONDS,
                format(
                        "from the command to half of the flow at the end, mean of %d, longest %.2f s",
                        seconds.length, longest));
    }

    /**
     * The lowest share of successes with which as many as these would still come in one case of twenty (Clopper and Pearson,
     * Biometrika 26, 1934), found by halving.
     */
    static double leastShare(int successes, int of) {
        if (successes == 0) {
            return 0;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (chanceOfAtLeast(successes, of, middle) < RISK) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double chanceOfAtLeast(int successes, int of, double share) {
        double chance = 0;
        double ways = 1;
        for (int k = 0; k <= of; k++) {
            if (k >= successes) {
                chance += ways * Math.pow(share, k) * Math.pow(1 - share, of - k);
            }
            ways = ways * (of - k) / (k + 1);
        }
        return chance;
    }
}
