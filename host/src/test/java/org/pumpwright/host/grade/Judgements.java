package org.pumpwright.host.grade;

import java.util.OptionalDouble;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.grade.FeatureJudgement.Decision;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.rule.Role;
import org.pumpwright.host.rule.Source;

/** Judged features for tests that do not care where their limits stand. */
public final class Judgements {
    private Judgements() {}

    public static FeatureJudgement of(
            Feature feature,
            double volts,
            Uncertain measured,
            Band band,
            double guard,
            Decision decision,
            boolean judged) {
        return new FeatureJudgement(
                feature,
                Double.isNaN(volts) ? OptionalDouble.empty() : OptionalDouble.of(volts),
                measured,
                Limits.of("healthy range of curve test v1", band, new Source("curves/test.yaml", 1, 12)),
                new Guard(1.645, guard, Source.PROGRAM),
                decision,
                judged ? Role.JUDGED : Role.INFORMATION);
    }
}
