package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.BladePattern;
import org.pumpwright.host.signal.IntervalStatistics;
import org.pumpwright.host.signal.PulseTrain;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.PointMark;

/**
 * Shares of missing and of double pulses, and how uneven the rest is, from all points of a sweep slow enough for
 * their samples. A share seen k times in n is k/n with the standard deviation that a rate has which could be anything before
 * (Laplace's rule of succession, textbook): it does not claim 0 for certain. Thread-safe.
 */
final class PulseShares {
    private static final int LEAST_INTERVALS = 50;
    private static final int MOST_BLADES = 8;
    private static final double LEAST_SAMPLES_APART = 1.6;

    private long all;
    private long longs;
    private long shorts;
    private double squares;
    private double patternSquares;
    private long usual;

    private PulseShares() {}

    static List<Finding> of(FindingInput input, Sweep sweep) {
        PulseShares shares = new PulseShares();
        for (PointMark point : input.points(sweep)) {
            Window window = input.measured(point);
            long pulses = window.pulses(MeterFindings.RETURNED);
            if (pulses > 0 && window.size() > LEAST_SAMPLES_APART * pulses) {
                shares.add(window.train(MeterFindings.RETURNED));
            }
        }
        return shares.findings();
    }

    /**
     * At flows so low that one sample at most falls between two pulses, more than one new pulse in a sample is a pulse that came
     * twice; all others are known by their times.
     */
    private void add(PulseTrain train) {
        double[] numbers = train.numbers();
        double[] seconds = train.seconds();
        double[] whole = train.meanIntervals();
        for (int i = 0; i < whole.length; i++) {
            whole[i] *= numbers[i + 1] - numbers[i];
        }
        double[] sorted = whole.clone();
        Arrays.sort(sorted);
        if (sorted.length == 0) {
            return;
        }
        double median = sorted[sorted.length / 2];
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < whole.length; i++) {
            long hidden = Math.round(numbers[i + 1] - numbers[i]) - 1;
            double interval = seconds[i + 1] - seconds[i];
            all += 1 + hidden;
            shorts += hidden;
            if (interval > IntervalStatistics.LONG * median) {
                longs++;
            } else if (interval < IntervalStatistics.SHORT * median) {
                shorts++;
            } else if (hidden == 0) {
                kept.add(i);
            }
        }
        addUsual(whole, kept);
    }

    private void addUsual(double[] intervals, List<Integer> kept) {
        if (kept.size() < 2) {
            return;
        }
        double[] numbers = kept.stream().mapToDouble(Integer::doubleValue).toArray();
        double[] rest = kept.stream().mapToDouble(i -> intervals[i]).toArray();
        double mean = Statistics.mean(rest);
        double deviation = Statistics.deviation(rest) / mean;
        double pattern = BladePattern.detect(numbers, rest, MOST_BLADES).deviation() / mean;
        usual += rest.length;
        squares += rest.length * deviation * deviation;
        patternSquares += rest.length * pattern * pattern;
    }

    private List<Finding> findings() {
        String step = MeterKFindings.STEP;
        if (usual < LEAST_INTERVALS) {
            return List.of(Finding.word(
                    step,
                    "missing pulses",
                    "not measured",
                    format("%d intervals at flows slow enough for the samples", all)));
        }
        String of = format("of %d intervals at flows slow enough for the samples", all);
        double uneven = Math.sqrt(squares / usual);
        return List.of(
                Finding.figure(step, "missing pulses", share(longs), FindingUnit.SHARE, longs + " " + of),
                Finding.figure(step, "double pulses", share(shorts), FindingUnit.SHARE, shorts + " " + of),
                Finding.figure(
                        step,
                        "pulse intervals uneven by",
                        new Uncertain(uneven, uneven / Math.sqrt(2.0 * usual), usual),
                        FindingUnit.SHARE,
                        "standard deviation over mean, long and short ones left out"),
                Finding.figure(
                        step,
                        "blade pattern",
                        Uncertain.of(Math.sqrt(patternSquares / usual), uneven / Math.sqrt(2.0 * usual)),
                        FindingUnit.SHARE,
                        "of it what comes again every turn"));
    }

    private Uncertain share(long seen) {
        double likely = (seen + 1.0) / (all + 2);
        return new Uncertain(
                seen / (double) all, Math.sqrt(likely * (1 - likely) / (all + 3)), Double.POSITIVE_INFINITY);
    }
}
