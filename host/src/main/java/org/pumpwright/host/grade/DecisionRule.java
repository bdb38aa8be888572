package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;

import java.util.Optional;
import org.pumpwright.host.curve.HealthyCurve;

/** The decision rule in words, as every paper must state it (ISO/IEC 17025:2017, 7.8.6). Thread-safe. */
final class DecisionRule {
    private DecisionRule() {}

    static String words(GuardBand guard, Optional<HealthyCurve> curve) {
        String rule = format(
                "PASS when every judged feature lies inside its healthy range by its guard, FAIL when one lies outside by its"
                        + " guard, else INCONCLUSIVE. Guard %.3f u, u being the feature's standard uncertainty: at most 5 %%"
                        + " one-sided risk at a limit (JCGM 106).",
                guard.factor());
        return rule + " " + curve.map(DecisionRule::range).orElse("There was no healthy curve.");
    }

    private static String range(HealthyCurve curve) {
        return format(
                "Healthy range: mean +- k s of curve %s, n = %d known-good units, k = %.2f (%s).",
                curve.label(), curve.units(), curve.toleranceFactor(), curve.coverage());
    }
}
