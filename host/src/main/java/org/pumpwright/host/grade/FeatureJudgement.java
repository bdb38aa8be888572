package org.pumpwright.host.grade;

import java.util.List;
import java.util.OptionalDouble;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.rule.Role;

/**
 * One feature, its limits and the decision. Units are the feature's own. A feature with limits of several sets has a
 * judgement for each. Thread-safe.
 *
 * @param feature what was judged
 * @param effectiveVolts where on the curve, V; empty for what belongs to no point
 * @param raw as read, before corrections
 * @param corrections in the order in which they are made
 * @param measured the corrected value with its whole standard uncertainty
 * @param budget what that uncertainty is made of
 * @param limits what it is held against
 * @param guard how far from a limit is far enough
 * @param decision the decision by the guard
 * @param role whether it makes the verdict
 * @param remark why a point that the plan judges was left as information; empty otherwise
 */
public record FeatureJudgement(
        Feature feature,
        OptionalDouble effectiveVolts,
        double raw,
        List<Correction> corrections,
        Uncertain measured,
        List<BudgetTerm> budget,
        Limits limits,
        Guard guard,
        Decision decision,
        Role role,
        String remark) {
    public FeatureJudgement {
        corrections = List.copyOf(corrections);
        budget = List.copyOf(budget);
    }

    /** A feature that was neither corrected nor has a budget of several parts. */
    public FeatureJudgement(
            Feature feature,
            OptionalDouble effectiveVolts,
            Uncertain measured,
            Limits limits,
            Guard guard,
            Decision decision,
            Role role) {
        this(
                feature,
                effectiveVolts,
                measured.value(),
                List.of(),
                measured,
                List.of(),
                limits,
                guard,
                decision,
                role,
                "");
    }

    /** What the guard-banded comparison says, and on which side. */
    public enum Decision {
        INSIDE,
        LOW,
        HIGH,
        /** Within the guard of the lower limit, on either side of it. */
        NEAR_LOW,
        /** Within the guard of the upper limit, on either side of it. */
        NEAR_HIGH
    }

    /** Measured less centre of the healthy range, as a share of the centre; not a number where there is no centre. */
    public double deviation() {
        double centre = centre();
        return (measured.value() - centre) / centre;
    }

    /** The healthy mean; not a number where there is none. */
    public double centre() {
        return limits.centre().orElse(Double.NaN);
    }

    /** Effective volts; not a number for what belongs to no point. */
    public double volts() {
        return effectiveVolts.orElse(Double.NaN);
    }

    /** False for what is shown for information only. */
    public boolean judged() {
        return role == Role.JUDGED;
    }

    public boolean failed() {
        return decision == Decision.LOW || decision == Decision.HIGH;
    }

    public boolean near() {
        return decision == Decision.NEAR_LOW || decision == Decision.NEAR_HIGH;
    }
}
