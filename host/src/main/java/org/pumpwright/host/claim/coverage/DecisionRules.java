package org.pumpwright.host.claim.coverage;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.CoverageDecision.Outcome;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.RefusedException;

/** Whether a decision may be signed. Thread-safe. */
public final class DecisionRules {
    private DecisionRules() {}

    /**
     * Checks a decision.
     *
     * @param rules the coverage rules that hold for the claim; empty where there are none
     * @throws RefusedException when it may not be signed, saying why and what to do
     */
    public static void check(ClaimFile file, CoverageDecision decision, Optional<CoverageRules> rules)
            throws RefusedException {
        if (file.findings().isEmpty()) {
            throw new RefusedException(
                    "claim %s can't be decided: there is no finding yet. First a technician: pumpwright claim finding %s"
                            .formatted(file.number(), file.number()));
        }
        signers(file, decision);
        if (rules.isPresent()) {
            attachments(file, decision, rules.get());
            value(file, decision, rules.get());
        }
    }

    private static void signers(ClaimFile file, CoverageDecision decision) throws RefusedException {
        Set<String> testers = file.testers().stream().map(DecisionRules::name).collect(Collectors.toSet());
        for (String signer : decision.second()
                .map(second -> List.of(decision.signer(), second))
                .orElse(List.of(decision.signer()))) {
            if (testers.contains(name(signer))) {
                throw new RefusedException(
                        "%s tested this unit or signed a finding on it, and can't decide claim %s. Who measures does not decide: have somebody else sign."
                                .formatted(signer, file.number()));
            }
        }
        if (decision.second()
                .filter(second -> name(second).equals(name(decision.signer())))
                .isPresent()) {
            throw new RefusedException(
                    "%s can't be the first and the second signer of one decision.".formatted(decision.signer()));
        }
    }

    /** Names are the same whatever their case and their spaces. */
    private static String name(String typed) {
        return typed.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    private static void attachments(ClaimFile file, CoverageDecision decision, CoverageRules rules)
            throws RefusedException {
        if (decision.outcome() != Outcome.APPROVE && decision.outcome() != Outcome.DENY) {
            return;
        }
        String lacking = rules.needed(worth(file, decision)).stream()
                .filter(file.missing()::contains)
                .map(Missing::word)
                .collect(Collectors.joining(", "));
        if (!lacking.isEmpty()) {
            throw new RefusedException(
                    "claim %s can't be %s: missing is %s, which %s asks for. Add it, or decide goodwill or refer."
                            .formatted(
                                    file.number(),
                                    decision.outcome() == Outcome.APPROVE ? "approved" : "denied",
                                    lacking,
                                    rules.label()));
        }
    }

    private static void value(ClaimFile file, CoverageDecision decision, CoverageRules rules) throws RefusedException {
        if (decision.outcome() == Outcome.REFER) {
            return;
        }
        Optional<Amount> worth = worth(file, decision);
        if (worth.isEmpty()) {
            if (rules.askForTheValue()) {
                throw new RefusedException(
                        "nobody has said what claim %s is worth, and %s asks for more above a value. Give it: --amount X"
                                .formatted(file.number(), rules.label()));
            }
            return;
        }
        if (rules.needsSecondSigner(worth.get()) && decision.second().isEmpty()) {
            throw new RefusedException(
                    "claim %s is worth %s, and above %s two persons sign (%s). Add: --second-signer NAME"
                            .formatted(
                                    file.number(),
                                    worth.get().text(),
                                    rules.secondSignerAbove()
                                            .orElseThrow()
                                            .value()
                                            .text(),
                                    rules.label()));
        }
    }

    /** The larger of what is claimed and what is given. */
    private static Optional<Amount> worth(ClaimFile file, CoverageDecision decision) {
        Optional<Amount> claimed = file.intake().value();
        Optional<Amount> given = decision.amount();
        return claimed.isPresent() && given.isPresent()
                ? Optional.of(claimed.get().compareTo(given.get()) >= 0 ? claimed.get() : given.get())
                : claimed.or(() -> given);
    }
}
