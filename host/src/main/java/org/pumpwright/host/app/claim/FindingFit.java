package org.pumpwright.host.app.claim;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.FindingRules;
import org.pumpwright.host.claim.RefusedException;
import org.pumpwright.host.claim.Reproduced;
import org.pumpwright.host.claim.Waiver;

/**
 * Which categories agree with what is on record of a claim. The rules are asked again when a finding is signed. Thread-safe.
 *
 * @param agreeing those that can be signed
 * @param provoked whether a plan was run that provokes what comes and goes; without one somebody must answer for a symptom that is
 *     closed as not reproduced
 */
public record FindingFit(Set<Category> agreeing, boolean provoked) {
    /** Stands for whoever may answer for a step, while it is only asked whether the runs agree. */
    private static final Waiver SOMEBODY = new Waiver(
            Waiver.Step.INTERMITTENT_PLAN,
            "somebody",
            "asked only",
            OffsetDateTime.of(2000, 1, 1, 0, 0, 0, 0, ZoneOffset.UTC));

    public FindingFit {
        agreeing = Set.copyOf(agreeing);
    }

    /**
     * The categories that fit.
     *
     * @param provoking plans that provoke what comes and goes, for the unit's kind
     */
    static FindingFit of(ClaimFile file, Set<String> provoking) {
        FindingRules rules = FindingRules.of(file, provoking);
        Set<Category> fitting = EnumSet.noneOf(Category.class);
        for (Category category : Category.values()) {
            if (agrees(rules, category)) {
                fitting.add(category);
            }
        }
        return new FindingFit(fitting, rules.runs().ranOneOf(provoking));
    }

    private static boolean agrees(FindingRules rules, Category category) {
        try {
            rules.check(category, only(category).orElse(Reproduced.YES), Optional.of(SOMEBODY));
            return true;
        } catch (RefusedException e) {
            return false;
        }
    }

    /** What such a finding says of the complaint, where it can only say one thing. */
    public static Optional<Reproduced> only(Category category) {
        return switch (category) {
            case C4 -> Optional.of(Reproduced.NO);
            case C6 -> Optional.of(Reproduced.NOT_ATTEMPTED);
            default -> Optional.empty();
        };
    }
}
