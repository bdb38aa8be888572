package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.ReadingJudge.Spoken;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.grade.cause.CauseInput;
import org.pumpwright.host.grade.cause.Causes;
import org.pumpwright.host.grade.cause.CutShort;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.Findings;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.rule.PassNeed;
import org.pumpwright.host.rule.Role;
import org.pumpwright.host.rule.WordRule;
import org.pumpwright.host.trace.Ending;

/**
 * Grades a run, in this order: what a person saw that ends the matter; whether the unit could be tested at all; whether the
 * stand and the run were fit; only then the unit's features, each with its guard. Last come likely causes, the next test,
 * and apart from the verdict whether the complaint is explained. Pure: the same input gives the same grade, so a stored
 * run can be graded again. Thread-safe.
 */
public final class Grader {
    private final GradingInput input;
    private final GradingRules rules;
    private final List<PointReading> points;
    private final List<Finding> findings;

    private Grader(GradingInput input) {
        this.input = input;
        rules = input.rulesOrStandard();
        points = PointReading.all(input.trace(), input.plan().wiring().drive());
        findings = new ArrayList<>(Findings.of(input.forFindings()));
        findings.addAll(RunReadings.of(input, points));
    }

    /**
     * The grade of a run, with causes from the program's own atlases.
     *
     * @throws IllegalArgumentException when the trace contradicts itself, e.g. a pulse count that falls
     * @throws IllegalStateException when the stand has no channel for volts at the pins or supply amps
     */
    public static Grade grade(GradingInput input) {
        return new Grader(input).grade();
    }

    private Grade grade() {
        List<StandCheck> checks = StandChecks.of(input, points);
        List<String> seen = SafetyFirst.observations(input);
        Judged judged;
        if (!seen.isEmpty()) {
            judged = unfit(Verdict.FAIL, seen, "stop testing: make it safe, keep it as it is, and tag it");
        } else if (input.intake().notTestable().isPresent()) {
            judged = unfit(
                    Verdict.NOT_TESTED,
                    List.of("not testable as it came: "
                            + input.intake().notTestable().get()),
                    "tell the customer what must be done before it can be tested");
        } else {
            List<StandCheck> failed =
                    checks.stream().filter(check -> !check.ok()).toList();
            judged = failed.isEmpty() ? judge() : invalid(failed);
        }
        return new Grade(
                judged.verdict,
                judged.reasons,
                checks,
                judged.features,
                findings,
                judged.causes,
                judged.nextTest,
                DecisionRule.words(rules, input.curve()),
                input.curve().map(HealthyCurve::provisional).orElse(false),
                ComplaintCheck.answer(input, judged.verdict, judged.reasons, judged.features, findings),
                input.intake().attempt());
    }

    private record Judged(
            Verdict verdict,
            List<String> reasons,
            List<FeatureJudgement> features,
            List<Cause> causes,
            String nextTest) {}

    private static Judged unfit(Verdict verdict, List<String> reasons, String next) {
        return new Judged(verdict, reasons, List.of(), List.of(), next);
    }

    private static Judged invalid(List<StandCheck> failed) {
        List<String> reasons =
                failed.stream().map(c -> c.name() + ": " + c.finding()).toList();
        return unfit(Verdict.INVALID, reasons, failed.get(0).remedy());
    }

    private Judged judge() {
        List<FeatureJudgement> sweep = input.curve()
                .map(curve -> new FeatureJudge(input, curve, points).judge(points))
                .orElse(List.of());
        ReadingJudge readings = new ReadingJudge(rules);
        List<FeatureJudgement> features = new ArrayList<>(sweep);
        List<String> open = new ArrayList<>();
        if (!input.plan().judged().isEmpty() && input.curve().isPresent()) {
            FunctionalLimits functional = new FunctionalLimits(input.curve().get(), sweep);
            features.addAll(functional.judge());
            open.addAll(functional.notReached());
        }
        features.addAll(readings.figures(findings));
        List<Spoken> spoken = readings.words(findings);
        List<String> stand = ofTheStand(features, spoken);
        if (!stand.isEmpty()) {
            return new Judged(Verdict.INVALID, stand, features, List.of(), "put that right, then run again");
        }
        Reasons reasons = new Reasons(input, points, features, spoken, open);
        Verdict verdict = reasons.verdict();
        if (verdict == Verdict.PASS || verdict == Verdict.NOT_TESTED) {
            String next = verdict == Verdict.PASS ? "" : toBeTested();
            return new Judged(verdict, reasons.words(), features, List.of(), next);
        }
        Causes causes = causes();
        return new Judged(verdict, reasons.words(), features, causes.listed(), nextTest(verdict, reasons, causes));
    }

    /** What the shop's rules call a fault of the stand or of the connection. */
    private List<String> ofTheStand(List<FeatureJudgement> features, List<Spoken> spoken) {
        List<String> found = new ArrayList<>();
        features.stream()
                .filter(f -> f.role() == Role.STAND && f.failed())
                .forEach(f -> found.add(new Phrases(input.units()).reason(f)));
        spoken.stream()
                .filter(each -> each.meaning() == WordRule.Meaning.STAND)
                .forEach(each -> found.add(each.says()));
        return found;
    }

    private String toBeTested() {
        return input.plan().judged().isEmpty()
                ? "look at the readings; a verdict needs a plan that judges"
                : "choose or make a healthy curve, then grade this run again";
    }

    private Causes causes() {
        List<PointReading> driven = points.stream().filter(PointReading::driven).toList();
        boolean cutShort = input.plan().kind() == UnitKind.PUMP_12V
                && input.ending().kind() == Ending.Kind.UNIT_OUT_OF_BOUNDS
                && driven.stream().allMatch(point -> point.pulses() == 0);
        if (cutShort) {
            return CutShort.causes(!driven.isEmpty());
        }
        OptionalDouble rest = RestReading.of(input.trace()).stream()
                .mapToDouble(RestReading::volts)
                .findFirst();
        return Causes.of(new CauseInput(
                input.plan().kind(),
                SweptPoints.of(points),
                input.curve(),
                findings,
                rest,
                input.stand().supplyVolts(),
                input.stand().nozzleM3PerSecondPerRootPascal()));
    }

    private String nextTest(Verdict verdict, Reasons reasons, Causes causes) {
        if (verdict == Verdict.INCONCLUSIVE) {
            Optional<PassNeed> need = reasons.passNeed();
            return need.map(each -> "run the plan " + String.join(" or ", each.plans()))
                    .orElseGet(() -> Ladder.next(rules, input.intake().attempt()));
        }
        return causes.nextTest().orElseGet(() -> withoutCause(causes.toRead()));
    }

    private String withoutCause(String toRead) {
        if (input.ending().kind() == Ending.Kind.UNIT_OUT_OF_BOUNDS) {
            return "do not drive it again: turn it by hand with the plug off, rinse it with warm water, then run the full test";
        }
        String look = "no known pattern fits: check lead and plug, look at the unit, then run the full plan once more";
        return toRead.isEmpty() ? look : look + "; " + toRead;
    }
}
