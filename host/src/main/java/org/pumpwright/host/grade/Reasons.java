package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.ReadingJudge.Spoken;
import org.pumpwright.host.rule.PassNeed;
import org.pumpwright.host.rule.WordRule;
import org.pumpwright.host.trace.Ending;

/**
 * The verdict on a unit whose stand was proved, and why. A condition that needs no limit, such as a run that the unit
 * itself ended, fails the unit first; then its features and what its steps said do. Thread-safe.
 */
final class Reasons {
    private final GradingInput input;
    private final List<PointReading> points;
    private final List<FeatureJudgement> features;
    private final List<FeatureJudgement> judged;
    private final List<Spoken> spoken;
    private final List<String> open;
    private final Phrases phrases;

    /**
     * @param features everything that was held against limits
     * @param spoken readings that came as words
     * @param open what else leaves the verdict open
     */
    Reasons(
            GradingInput input,
            List<PointReading> points,
            List<FeatureJudgement> features,
            List<Spoken> spoken,
            List<String> open) {
        this.input = input;
        this.points = points;
        this.features = features;
        this.spoken = spoken;
        this.open = open;
        judged = features.stream().filter(FeatureJudgement::judged).toList();
        phrases = new Phrases(input.units());
    }

    Verdict verdict() {
        if (!failures().isEmpty()) {
            return Verdict.FAIL;
        }
        if (nothingJudged()) {
            return Verdict.NOT_TESTED;
        }
        return doubts().isEmpty() && passNeed().isEmpty() ? Verdict.PASS : Verdict.INCONCLUSIVE;
    }

    /** A plan that judges points needs a curve for a PASS, whatever else it reads. */
    private boolean nothingJudged() {
        boolean pointsWithoutCurve =
                !input.plan().judged().isEmpty() && input.curve().isEmpty();
        boolean said = spoken.stream().anyMatch(each -> each.meaning() != WordRule.Meaning.INFORMATION);
        boolean asked = features.stream().anyMatch(each -> !each.remark().isEmpty());
        return pointsWithoutCurve || (judged.isEmpty() && !said && !asked);
    }

    /** Why, the weightiest first. A unit that failed is not told of its doubtful points too. */
    List<String> words() {
        List<String> words = new ArrayList<>(failures());
        if (words.isEmpty() && !nothingJudged()) {
            words.addAll(doubts());
            passNeed().ifPresent(need -> words.add(need.says()));
        }
        return words.isEmpty() ? List.of(nothingFound()) : words;
    }

    /** What must be run before a unit with this complaint may pass; only told when nothing else is in doubt. */
    Optional<PassNeed> passNeed() {
        return doubts().isEmpty()
                ? input.intake()
                        .complaint()
                        .flatMap(word -> input.rulesOrStandard()
                                .passNeed(word, input.plan().id()))
                : Optional.empty();
    }

    private List<String> failures() {
        List<String> failures = new ArrayList<>(conditions());
        judged.stream()
                .filter(FeatureJudgement::failed)
                .sorted(Comparator.comparingDouble(f -> -beyondLimit(f)))
                .forEach(f -> failures.add(phrases.reason(f)));
        failures.addAll(said(WordRule.Meaning.FAIL));
        return failures;
    }

    private List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        judged.stream().filter(FeatureJudgement::near).forEach(f -> doubts.add(phrases.reason(f)));
        doubts.addAll(said(WordRule.Meaning.INCONCLUSIVE));
        doubts.addAll(doubtfulPoints());
        features.stream()
                .filter(f -> !f.remark().isEmpty())
                .forEach(f -> doubts.add(f.feature().words() + " could not be judged: " + f.remark()));
        doubts.addAll(open);
        return doubts;
    }

    private List<String> said(WordRule.Meaning meaning) {
        return spoken.stream()
                .filter(each -> each.meaning() == meaning)
                .map(Spoken::says)
                .toList();
    }

    private String nothingFound() {
        if (!input.plan().judged().isEmpty() && input.curve().isEmpty()) {
            return "there is no healthy curve for this model and set-up";
        }
        return nothingJudged() ? "this plan judges nothing; its readings are below" : inside();
    }

    private String inside() {
        boolean allOfCurve = judged.stream().allMatch(f -> f.limits().centre().isPresent());
        return Phrases.format(
                "all %d judged features lie inside their %s",
                judged.size() + said(WordRule.Meaning.PASS).size(), allOfCurve ? "healthy ranges" : "limits");
    }

    /** How far outside its limits a feature lies: as a share of the centre, or of the limit where there is no centre. */
    private static double beyondLimit(FeatureJudgement f) {
        double value = f.measured().value();
        double limit = f.decision() == FeatureJudgement.Decision.LOW
                ? f.limits().low()
                : f.limits().high();
        double beyond = Math.abs(value - limit);
        return beyond / Math.max(Math.abs(f.limits().centre().orElse(limit)), Double.MIN_NORMAL);
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
