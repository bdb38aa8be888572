package org.pumpwright.host.grade;

import java.util.List;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.grade.finding.Finding;

/**
 * The whole judgement of one run. Thread-safe.
 *
 * @param verdict the verdict
 * @param reasons why, in plain words, the weightiest first; never empty
 * @param standChecks every check of the stand and the run
 * @param features what was held against limits, judged or for information: points of the sweep first, in its order, then
 *     those of the curve's limits of function, then readings
 * @param findings what the plan's steps have read, in the order of the plan
 * @param causes the likeliest first; empty unless something failed or is near
 * @param nextTest what to do next; empty after a PASS
 * @param rule the decision rule in words
 * @param advisory true when the curve is provisional: the verdict then only advises
 * @param explains whether what was found explains the complaint; apart from the verdict
 * @param attempt which run of this unit for this matter it was, from 1
 */
public record Grade(
        Verdict verdict,
        List<String> reasons,
        List<StandCheck> standChecks,
        List<FeatureJudgement> features,
        List<Finding> findings,
        List<Cause> causes,
        String nextTest,
        String rule,
        boolean advisory,
        ComplaintAnswer explains,
        int attempt) {
    public Grade {
        reasons = List.copyOf(reasons);
        standChecks = List.copyOf(standChecks);
        features = List.copyOf(features);
        findings = List.copyOf(findings);
        causes = List.copyOf(causes);
    }

    /** A grade of a run whose steps have read nothing besides the points of their sweeps. */
    public Grade(
            Verdict verdict,
            List<String> reasons,
            List<StandCheck> standChecks,
            List<FeatureJudgement> features,
            List<Cause> causes,
            String nextTest,
            String rule,
            boolean advisory) {
        this(verdict, reasons, standChecks, features, List.of(), causes, nextTest, rule, advisory);
    }

    /** A grade of a first run without a complaint. */
    public Grade(
            Verdict verdict,
            List<String> reasons,
            List<StandCheck> standChecks,
            List<FeatureJudgement> features,
            List<Finding> findings,
            List<Cause> causes,
            String nextTest,
            String rule,
            boolean advisory) {
        this(
                verdict,
                reasons,
                standChecks,
                features,
                findings,
                causes,
                nextTest,
                rule,
                advisory,
                ComplaintAnswer.NO_COMPLAINT,
                1);
    }

    /** The points of sweeps that were held against a healthy curve, in the order of the sweep. */
    public List<FeatureJudgement> points() {
        return features.stream()
                .filter(f ->
                        f.feature().place().isPresent() && f.limits().centre().isPresent())
                .toList();
    }

    /** What stands in the place of a grade that could not be made: nothing is said of the unit. */
    public static Grade none(String reason, String nextTest) {
        return new Grade(Verdict.INVALID, List.of(reason), List.of(), List.of(), List.of(), nextTest, "", false);
    }
}
