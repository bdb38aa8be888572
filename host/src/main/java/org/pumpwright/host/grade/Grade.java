package org.pumpwright.host.grade;

import java.util.List;
import org.pumpwright.host.grade.finding.Finding;

/**
 * The whole judgement of one run. Thread-safe.
 *
 * @param verdict the verdict
 * @param reasons why, in plain words, the weightiest first; never empty
 * @param standChecks every check of the stand and the run
 * @param features judged features and points for information, in the order of the sweep
 * @param findings what the plan's steps have read, in the order of the plan; nothing is judged on them
 * @param causes the likeliest first; empty unless something failed or is near
 * @param nextTest what to do next; empty after a PASS
 * @param rule the decision rule in words
 * @param advisory true when the curve is provisional: the verdict then only advises
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
        boolean advisory) {
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

    /** What stands in the place of a grade that could not be made: nothing is said of the unit. */
    public static Grade none(String reason, String nextTest) {
        return new Grade(Verdict.INVALID, List.of(reason), List.of(), List.of(), List.of(), nextTest, "", false);
    }
}
