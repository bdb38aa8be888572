package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;

import java.util.Optional;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.LimitSet;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.rule.Source;

/** The decision rule in words, as every paper must state it (ISO/IEC 17025:2017, 7.8.6). Thread-safe. */
final class DecisionRule {
    private DecisionRule() {}

    static String words(GradingRules rules, Optional<HealthyCurve> curve) {
        StringBuilder words = new StringBuilder(format(
                "PASS when every judged feature lies inside its limits by its guard, FAIL when one lies outside by its"
                        + " guard, else INCONCLUSIVE. Guard %.3f u, u being the feature's standard uncertainty%s (JCGM 106).",
                rules.decision().guardFactor(), risk(rules.decision().guardFactor())));
        words.append(' ').append(curve.map(DecisionRule::range).orElse("There was no healthy curve."));
        if (!rules.limits().isEmpty()) {
            words.append(format(" Limits of single readings: rules %s.", rules.label()));
        }
        if (!rules.decision().guardSource().equals(Source.PROGRAM)) {
            words.append(format(
                    " The guard stands in %s.", rules.decision().guardSource().words()));
        }
        curve.ifPresent(each -> each.limitSets().forEach(set -> words.append(set(set))));
        return words.toString();
    }

    /** Only the usual guard has a risk that need not be computed. */
    private static String risk(double factor) {
        return factor == GuardBand.STANDARD.factor() ? ": at most 5 % one-sided risk at a limit" : "";
    }

    private static String range(HealthyCurve curve) {
        return format(
                "Healthy range: mean +- k s of curve %s, n = %d known-good units, k = %.2f (%s).",
                curve.label(), curve.units(), curve.toleranceFactor(), curve.coverage());
    }

    private static String set(LimitSet set) {
        return format(
                " Limit set %s, set by %s from %s: guard %.3f u.",
                set.name(), set.setBy(), set.source(), set.guardFactor());
    }
}
