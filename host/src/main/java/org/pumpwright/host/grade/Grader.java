package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.CauseRanking.Ranked;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.Findings;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Leg;

/**
 * Grades a run. First the stand is proved; only then is the unit judged, feature by feature with a guard band; last come
 * likely causes and the next test. Pure: the same input gives the same grade, so a stored run can be graded again.
 * Thread-safe.
 */
public final class Grader {
    private static final GuardBand GUARD = GuardBand.STANDARD;
    private static final String AGAIN = "new prime, same set-up, once more";

    private Grader() {}

    /** The grade of a run, with causes from the program's own atlas; see {@link #grade(GradingInput, CauseAtlas)}. */
    public static Grade grade(GradingInput input) {
        return grade(input, Standard.ATLAS);
    }

    /** Read once, when it is first needed. */
    private static final class Standard {
        static final CauseAtlas ATLAS = CauseAtlas.standard();
    }

    /**
     * The grade of a run, with causes from an atlas.
     *
     * @throws IllegalArgumentException when the trace contradicts itself, e.g. a pulse count that falls
     * @throws IllegalStateException when the stand has no channel for volts at the pins or supply amps
     */
    public static Grade grade(GradingInput input, CauseAtlas atlas) {
        List<PointReading> points =
                PointReading.all(input.trace(), input.plan().wiring().drive());
        List<Finding> findings = Findings.of(input.forFindings());
        List<StandCheck> checks = StandChecks.of(input, points);
        List<StandCheck> failed = checks.stream().filter(check -> !check.ok()).toList();
        String rule = DecisionRule.words(GUARD, input.curve());
        boolean advisory = input.curve().map(HealthyCurve::provisional).orElse(false);
        if (!failed.isEmpty()) {
            List<String> reasons =
                    failed.stream().map(c -> c.name() + ": " + c.finding()).toList();
            return new Grade(
                    Verdict.INVALID,
                    reasons,
                    checks,
                    List.of(),
                    findings,
                    List.of(),
                    failed.get(0).remedy(),
                    rule,
                    advisory);
        }
        Judged judged = judge(input, atlas, points);
        return new Grade(
                judged.verdict,
                judged.reasons,
                checks,
                judged.features,
                findings,
                judged.causes,
                judged.nextTest,
                rule,
                advisory);
    }

    private record Judged(
            Verdict verdict,
            List<String> reasons,
            List<FeatureJudgement> features,
            List<Cause> causes,
            String nextTest) {}

    private static Judged judge(GradingInput input, CauseAtlas atlas, List<PointReading> points) {
        List<FeatureJudgement> features = input.curve()
                .map(curve -> new FeatureJudge(curve, input.plan(), GUARD).judge(points))
                .orElse(List.of());
        Reasons reasons = new Reasons(input, points, features);
        Verdict verdict = reasons.verdict();
        if (verdict == Verdict.PASS || verdict == Verdict.NOT_TESTED) {
            String next = verdict == Verdict.PASS ? "" : toBeTested(input);
            return new Judged(verdict, reasons.words(), features, List.of(), next);
        }
        List<FeatureJudgement> upLeg = upLeg(points, features);
        CauseWords causes = new CauseWords(atlas, ranked(input, atlas, upLeg, points), upLeg);
        return new Judged(verdict, reasons.words(), features, causes.causes(), nextTest(verdict, input, causes));
    }

    private static String toBeTested(GradingInput input) {
        return input.plan().judged().isEmpty()
                ? "look at the readings; a verdict needs a plan that judges"
                : "choose or make a healthy curve, then grade this run again";
    }

    private static List<Ranked> ranked(
            GradingInput input, CauseAtlas atlas, List<FeatureJudgement> upLeg, List<PointReading> points) {
        // Only a run whose checks all held comes here, so a nozzle that was measured is sound.
        boolean nozzleIsSound = WaterChecks.measuresNozzle(points);
        return input.curve()
                .map(curve -> new CauseRanking(atlas, curve, upLeg).rank(nozzleIsSound))
                .orElse(List.of());
    }

    private static String nextTest(Verdict verdict, GradingInput input, CauseWords causes) {
        if (verdict == Verdict.INCONCLUSIVE) {
            return AGAIN;
        }
        return causes.nextTest().orElseGet(() -> withoutCause(input));
    }

    private static String withoutCause(GradingInput input) {
        return input.ending().kind() == Ending.Kind.UNIT_OUT_OF_BOUNDS
                ? "do not drive it again: turn it by hand with the plug off, rinse it with warm water, then run the full test"
                : "no known pattern fits: check lead and plug, look at the unit, then run the full plan once more";
    }

    private static List<FeatureJudgement> upLeg(List<PointReading> points, List<FeatureJudgement> features) {
        List<FeatureJudgement> up = new ArrayList<>();
        List<PointReading> driven = points.stream().filter(PointReading::driven).toList();
        for (int i = 0; i < features.size(); i++) {
            if (driven.get(i / 2).mark().leg() == Leg.UP) {
                up.add(features.get(i));
            }
        }
        return up;
    }
}
