package org.pumpwright.host.app.claim;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.claim.FindingRules;
import org.pumpwright.host.claim.Reproduced;
import org.pumpwright.host.claim.Waiver;
import org.pumpwright.host.claim.coverage.CoverageRules;
import org.pumpwright.host.claim.coverage.DecisionRules;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.ledger.StoreException;

/** Signs findings and decisions, each by its own person, after the rules were asked. Thread-safe. */
public final class DecisionDesk {
    private final ClaimDesk desk;
    private final ClaimData data;

    /**
     * @param desk puts them on record
     * @param data the rules
     */
    public DecisionDesk(ClaimDesk desk, ClaimData data) {
        this.desk = desk;
        this.data = data;
    }

    /**
     * What a technician signs.
     *
     * @param parts the parts concerned
     * @param declined who closes a symptom that did not show without provoking it; empty when nobody does
     */
    public record FindingAsked(
            Category category,
            Reproduced reproduced,
            String basis,
            List<String> parts,
            String signer,
            Optional<Declined> declined) {
        public FindingAsked {
            parts = List.copyOf(parts);
        }
    }

    /**
     * Somebody goes past a step.
     *
     * @param person who answers for it
     * @param reason why
     */
    public record Declined(String person, String reason) {}

    /** What the desk decides; see {@link CoverageDecision}. */
    public record DecisionAsked(
            CoverageDecision.Outcome outcome,
            String reason,
            String signer,
            Optional<String> second,
            Optional<Amount> amount) {}

    /**
     * Signs a finding; it names every run that says something.
     *
     * @param corrects why it takes the place of the last one; empty for the first
     * @throws OrderException when it does not agree with what is on record
     */
    public ClaimFile find(String claim, FindingAsked asked, Optional<String> corrects)
            throws OrderException, DataFileException, StoreException {
        Optional<Declined> declined = asked.declined();
        if (declined.isPresent()) {
            desk.act(
                    claim,
                    (file, now) -> {
                        Waiver waiver = waiver(declined.get(), now);
                        rules(file).check(asked.category(), asked.reproduced(), Optional.of(waiver));
                        return new Act.Waived(waiver);
                    },
                    Optional.empty());
        }
        return desk.act(
                claim,
                (file, now) -> {
                    once(file.findings().isEmpty(), corrects, "finding", claim);
                    FindingRules rules = rules(file);
                    rules.check(asked.category(), asked.reproduced(), declined.map(each -> waiver(each, now)));
                    return new Act.Found(new Finding(
                            asked.category(),
                            asked.reproduced(),
                            asked.basis(),
                            asked.parts(),
                            rules.runs().entries(),
                            asked.signer(),
                            now));
                },
                corrects);
    }

    private static Waiver waiver(Declined declined, java.time.OffsetDateTime now) {
        return new Waiver(Waiver.Step.INTERMITTENT_PLAN, declined.person(), declined.reason(), now);
    }

    private FindingRules rules(ClaimFile file) throws OrderException, DataFileException {
        Set<String> provoking = data.provokingPlans(file.intake().unit().model());
        return FindingRules.of(file, provoking);
    }

    /** Which categories agree with what is on record. */
    public FindingFit fit(ClaimFile file) throws OrderException, DataFileException {
        return FindingFit.of(file, data.provokingPlans(file.intake().unit().model()));
    }

    /**
     * Signs a decision.
     *
     * @param corrects why it takes the place of the last one; empty for the first
     * @throws OrderException when it may not be signed
     */
    public ClaimFile decide(String claim, DecisionAsked asked, Optional<String> corrects)
            throws OrderException, DataFileException, StoreException {
        return desk.act(
                claim,
                (file, now) -> {
                    once(file.decisions().isEmpty(), corrects, "decision", claim);
                    Optional<CoverageRules> rules =
                            data.coverage(file.intake().received().toLocalDate());
                    CoverageDecision decision = new CoverageDecision(
                            asked.outcome(),
                            asked.reason(),
                            asked.signer(),
                            asked.second(),
                            rules.map(CoverageRules::label),
                            asked.amount(),
                            now);
                    DecisionRules.check(file, decision, rules);
                    return new Act.Decided(decision);
                },
                corrects);
    }

    private static void once(boolean first, Optional<String> corrects, String what, String claim)
            throws OrderException {
        if (!first && corrects.isEmpty()) {
            throw new OrderException(
                    "claim %s has a %s already. Another one takes its place only with a reason: --corrects TEXT"
                            .formatted(claim, what));
        }
    }
}
