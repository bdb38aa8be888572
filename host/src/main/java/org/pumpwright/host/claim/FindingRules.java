package org.pumpwright.host.claim;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pumpwright.host.claim.Observation.Seen;
import org.pumpwright.host.grade.Verdict;

/**
 * Whether a finding agrees with what is on record. Thread-safe.
 *
 * @param file the claim
 * @param runs what its runs say
 * @param provoking plans that provoke what comes and goes, for the unit's kind
 */
public record FindingRules(ClaimFile file, RunsOfAClaim runs, Set<String> provoking) {
    public FindingRules {
        provoking = Set.copyOf(provoking);
    }

    /** The rules for a claim. */
    public static FindingRules of(ClaimFile file, Set<String> provoking) {
        return new FindingRules(file, RunsOfAClaim.of(file), provoking);
    }

    /**
     * Checks a finding.
     *
     * @param declined that somebody closes it without the provoking plan; empty when nobody does
     * @throws RefusedException when it does not agree, saying with what
     */
    public void check(Category category, Reproduced reproduced, Optional<Waiver> declined) throws RefusedException {
        switch (category.evidence()) {
            case FAIL -> outside(category);
            case PASS -> within(category);
            case INCONCLUSIVE -> cannotTell(category);
            case REASON -> notTestable(category, reproduced);
        }
        if (category == Category.C4) {
            notReproduced(reproduced, declined);
        }
        if (category == Category.C7 && !observed(Seen.PLANTER_CHECK)) {
            throw refused(
                    category,
                    "what was found on the planter is not on record. First: pumpwright claim note %s --seen planter-check"
                            .formatted(file.number()));
        }
    }

    private void outside(Category category) throws RefusedException {
        if (runs.with(Verdict.FAIL).isEmpty()) {
            throw refused(category, "it says outside limits, and no run on record found that");
        }
    }

    private void within(Category category) throws RefusedException {
        Optional<ClaimRun> fail = runs.with(Verdict.FAIL);
        if (fail.isPresent()) {
            throw refused(
                    category,
                    "it says within limits, and run %s found the unit outside"
                            .formatted(fail.get().run()));
        }
        if (runs.with(Verdict.PASS).isEmpty()) {
            throw refused(category, "it says within limits, and no run on record found that");
        }
        String open = runs.lastOfEachPlan().stream()
                .filter(run -> run.verdict() != Verdict.PASS)
                .map(run -> "%s (%s)".formatted(run.run(), run.plan()))
                .collect(Collectors.joining(", "));
        if (!open.isEmpty()) {
            throw refused(category, "the last run by its plan could not tell: %s".formatted(open));
        }
    }

    private void cannotTell(Category category) throws RefusedException {
        Optional<ClaimRun> fail = runs.with(Verdict.FAIL);
        if (fail.isPresent()) {
            throw refused(
                    category,
                    "it says inconclusive, and run %s found the unit outside its limits"
                            .formatted(fail.get().run()));
        }
        if (runs.with(Verdict.INCONCLUSIVE).isEmpty()) {
            throw refused(category, "it says inconclusive, and no run on record was");
        }
    }

    private void notTestable(Category category, Reproduced reproduced) throws RefusedException {
        if (!runs.telling().isEmpty()) {
            throw refused(category, "it says not testable, and the unit was tested");
        }
        if (reproduced != Reproduced.NOT_ATTEMPTED) {
            throw refused(category, "it says not testable, so that nothing was attempted: --reproduced not-attempted");
        }
    }

    private void notReproduced(Reproduced reproduced, Optional<Waiver> declined) throws RefusedException {
        if (reproduced != Reproduced.NO) {
            throw refused(Category.C4, "it says that the symptom was not reproduced: --reproduced no");
        }
        if (declined.isEmpty() && !runs.ranOneOf(provoking)) {
            throw refused(
                    Category.C4,
                    "what comes and goes was not provoked yet. Run one of: %s. Or somebody closes it without: --declined-by NAME --reason TEXT"
                            .formatted(provoking.stream().sorted().collect(Collectors.joining(", "))));
        }
    }

    private boolean observed(Seen what) {
        return file.observations().stream().anyMatch(each -> each.seen() == what);
    }

    private RefusedException refused(Category category, String why) {
        return new RefusedException("%s can't be signed for claim %s: %s. Runs on record: %s."
                .formatted(category, file.number(), why, runs.words()));
    }
}
