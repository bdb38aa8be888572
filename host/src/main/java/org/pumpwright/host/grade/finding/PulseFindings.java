package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.signal.PulseClassifier;
import org.pumpwright.host.signal.PulseDiagnosis;
import org.pumpwright.host.signal.PulseFault;
import org.pumpwright.host.signal.PulseHealth;
import org.pumpwright.host.signal.PulseTrain;
import org.pumpwright.host.trace.PointMark;

/**
 * What the pulses look like at the highest flow, and, where the samples left edges out there, at the highest flow at which
 * every edge is known. Thread-safe.
 */
final class PulseFindings {
    private static final String NAME = "pulses";

    private PulseFindings() {}

    static List<Finding> of(FindingInput input, Sweep sweep, List<PointMark> points, int meter) {
        List<PointMark> highestFirst = new ArrayList<>(points);
        highestFirst.sort(Comparator.comparingDouble(
                point -> -input.measured(point).hertz(meter).value()));
        List<Finding> findings = new ArrayList<>();
        for (PointMark point : highestFirst) {
            PulseTrain train = input.measured(point).train(meter);
            Optional<double[]> everyEdge = everyEdge(train);
            String at = format(
                    "at %s, %s way",
                    point.commanded().print(),
                    switch (point.leg()) {
                        case UP -> "up";
                        case DOWN -> "down";
                        case REPEAT -> "repeated";
                    });
            if (everyEdge.isPresent()) {
                findings.add(classified(sweep.name(), everyEdge.get(), at));
                return findings;
            }
            if (findings.isEmpty()) {
                findings.add(evenness(sweep.name(), PulseHealth.of(train), at));
            }
        }
        return findings;
    }

    /** The longest run of edges without one whose time is not known; empty where it is too short to judge. */
    static Optional<double[]> everyEdge(PulseTrain train) {
        double[] numbers = train.numbers();
        int best = 0;
        int bestEnd = 0;
        int from = 0;
        for (int i = 0; i < numbers.length; i++) {
            if (i > 0 && numbers[i] != numbers[i - 1] + 1) {
                from = i;
            }
            if (i + 1 - from > best) {
                best = i + 1 - from;
                bestEnd = i + 1;
            }
        }
        return best > PulseClassifier.LEAST_INTERVALS
                ? Optional.of(Arrays.copyOfRange(train.seconds(), bestEnd - best, bestEnd))
                : Optional.empty();
    }

    private static Finding classified(String step, double[] edgeSeconds, String at) {
        PulseDiagnosis diagnosis = PulseClassifier.of(edgeSeconds, OptionalDouble.empty());
        String word =
                diagnosis.candidates().stream().sorted().map(PulseFault::words).collect(Collectors.joining(" or "));
        return Finding.word(
                step, NAME, word, format("%s, from %d edges: %s", at, edgeSeconds.length, diagnosis.evidence()));
    }

    private static Finding evenness(String step, PulseHealth health, String at) {
        String word;
        if (health.intervals() < PulseHealth.LEAST_INTERVALS) {
            word = "too few to judge";
        } else {
            word = health.unsteady() ? "uneven: air slugs or surging flow" : "even";
        }
        return Finding.word(
                step,
                NAME,
                word,
                format(
                        "%s, means between samples vary by %.1f %%, lag-one %+.2f",
                        at, health.variation() * 100, health.lagOne()));
    }
}
