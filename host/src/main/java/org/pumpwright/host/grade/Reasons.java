package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.trace.Ending;

/**
 * The verdict on a unit whose stand was proved, and why. A condition that needs no curve, such as a run that the unit
 * itself ended, fails the unit first; then its features do. Thread-safe.
 */
final class Reasons {
    private final GradingInput input;
    private final List<PointReading> points;
    private final List<FeatureJudgement> judged;
    private final Phrases phrases;

    Reasons(GradingInput input, List<PointReading> points, List<FeatureJudgement> features) {
        this.input = input;
        this.points = points;
        judged = features.stream().filter(FeatureJudgement::judged).toList();
        phrases = new Phrases(input.units());
    }

    Verdict verdict() {
        if (!conditions().isEmpty() || judged.stream().anyMatch(FeatureJudgement::failed)) {
            return Verdict.FAIL;
        }
        if (judged.isEmpty()) {
            return Verdict.NOT_TESTED;
        }
        boolean unsure = judged.stream().anyMatch(FeatureJudgement::near)
                || !doubtfulPoints().isEmpty();
        return unsure ? Verdict.INCONCLUSIVE : Verdict.PASS;
    }

    /** Why, the weightiest first. A unit that failed is not told of its doubtful points too. */
    List<String> words() {
        List<String> words = new ArrayList<>(conditions());
        judged.stream()
                .filter(FeatureJudgement::failed)
                .sorted(Comparator.comparingDouble(f -> -beyondLimit(f)))
                .forEach(f -> words.add(phrases.reason(f)));
        if (words.isEmpty()) {
            judged.stream().filter(FeatureJudgement::near).forEach(f -> words.add(phrases.reason(f)));
            words.addAll(doubtfulPoints());
        }
        return words.isEmpty() ? List.of(nothingFound()) : words;
    }

    private String nothingFound() {
        if (input.plan().judged().isEmpty()) {
            return "this plan judges nothing; its readings are below";
        }
        return judged.isEmpty()
                ? "there is no healthy curve for this model and set-up"
                : Phrases.format("all %d judged features lie inside their healthy ranges", judged.size());
    }

    /** How far outside its range a feature lies, as a share of the centre. */
    private static double beyondLimit(FeatureJudgement f) {
        double value = f.measured().value();
        return Math.max(f.limits().low() - value, value - f.limits().high())
                / f.limits().centre();
    }

    private List<String> conditions() {
        List<String> found = new ArrayList<>();
        if (input.ending().kind() == Ending.Kind.UNIT_OUT_OF_BOUNDS) {
            found.add("the unit ended the run: " + input.ending().reason());
        }
        deadPoint()
                .ifPresent(p -> found.add(Phrases.format(
                        "no current though driven: %.2f A at %s with %.2f V at the pins; check lead and plug first",
                        p.supplyAmps().value(),
                        p.mark().commanded().print(),
                        p.voltsAtPins().value())));
        return found;
    }

    /** The hardest driven point, when neither current nor flow came at any. A returned meter is not what is driven. */
    private Optional<PointReading> deadPoint() {
        if (input.plan().kind() == UnitKind.METER) {
            return Optional.empty();
        }
        List<PointReading> driven = points.stream().filter(PointReading::driven).toList();
        boolean dead = driven.stream()
                .allMatch(p -> p.pulses() == 0 && Math.abs(p.supplyAmps().value()) <= RestChecks.MOST_ZERO_AMPS);
        return dead ? driven.stream().max(Comparator.comparingDouble(PointReading::duty)) : Optional.empty();
    }

    private List<String> doubtfulPoints() {
        List<String> found = new ArrayList<>();
        for (PointReading point : points) {
            if (FeatureJudge.isJudged(input.plan(), point)) {
                String at = point.mark().commanded().print();
                if (!point.mark().settled()) {
                    found.add("the point at " + at + " did not settle: it cannot pass");
                }
                if (!point.mark().enoughPulses()) {
                    found.add(Phrases.format(
                            "the point at %s had %d pulses, too few: it cannot pass", at, point.pulses()));
                }
            }
        }
        return found;
    }
}
