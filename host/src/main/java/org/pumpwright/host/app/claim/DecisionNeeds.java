package org.pumpwright.host.app.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.claim.CoverageAssessment.Holds;
import org.pumpwright.host.claim.CoverageDecision.Outcome;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.coverage.CoverageRules;

/**
 * What a decision still lacks while it is being written, so that nothing is handed in that the rules of signing would refuse.
 * They are asked again when it is signed. Thread-safe.
 *
 * @param file the claim
 * @param rules the coverage rules that hold for it; empty where there are none
 */
public record DecisionNeeds(ClaimFile file, Optional<CoverageRules> rules) {
    private static final List<String> FOR_COVER = List.of("period", "hours", "acres", "registration", "consumables");

    /** Something that is lacking. */
    public enum Need {
        OUTCOME,
        REASON,
        SIGNER,
        /** Who signs has tested the unit or signed its finding. */
        OTHER_SIGNER,
        /** The second signer has, or is the first one. */
        OTHER_SECOND,
        /** The rules ask for more above a value, and nobody has said what the claim is worth. */
        AMOUNT,
        /** Something must be there before a claim is approved or denied. */
        ATTACHMENTS,
        /** Above a value two persons sign. */
        SECOND,
        /** A decision stands already: why does this one take its place? */
        WHY_AGAIN
    }

    /**
     * A decision that is being written.
     *
     * @param outcome empty while nothing is chosen
     * @param whyAgain why it takes the place of the one before; empty for the first
     */
    public record Written(
            Optional<Outcome> outcome,
            String reason,
            String signer,
            String second,
            Optional<Amount> amount,
            String whyAgain) {}

    /** What is lacking, in the order in which it is filled in. */
    public List<Need> of(Written written) {
        List<Need> needs = new ArrayList<>();
        needs(needs, Need.OUTCOME, written.outcome().isEmpty());
        needs(
                needs,
                Need.ATTACHMENTS,
                judges(written.outcome()) && !lacking(written.amount()).isEmpty());
        needs(needs, Need.REASON, written.reason().isBlank());
        ofSigners(needs, written);
        ofValue(needs, written);
        needs(
                needs,
                Need.WHY_AGAIN,
                !file.decisions().isEmpty() && written.whyAgain().isBlank());
        return needs;
    }

    private static boolean judges(Optional<Outcome> outcome) {
        return outcome.filter(each -> each == Outcome.APPROVE || each == Outcome.DENY)
                .isPresent();
    }

    private void ofSigners(List<Need> needs, Written written) {
        needs(needs, Need.SIGNER, written.signer().isBlank());
        needs(needs, Need.OTHER_SIGNER, hasMeasured(written.signer()));
        needs(
                needs,
                Need.OTHER_SECOND,
                !written.second().isBlank()
                        && (hasMeasured(written.second())
                                || name(written.second()).equalsIgnoreCase(name(written.signer()))));
    }

    private void ofValue(List<Need> needs, Written written) {
        if (written.outcome().filter(each -> each != Outcome.REFER).isEmpty()) {
            return;
        }
        Optional<Amount> worth = worth(written.amount());
        needs(
                needs,
                Need.AMOUNT,
                worth.isEmpty() && rules.filter(CoverageRules::askForTheValue).isPresent());
        needs(
                needs,
                Need.SECOND,
                written.second().isBlank()
                        && worth.isPresent()
                        && rules.filter(each -> each.needsSecondSigner(worth.get()))
                                .isPresent());
    }

    private static void needs(List<Need> needs, Need need, boolean lacking) {
        if (lacking) {
            needs.add(need);
        }
    }

    /** What the rules ask for before a claim of this worth is approved or denied, and is not there. */
    public List<Missing> lacking(Optional<Amount> given) {
        return rules.map(each -> each.needed(worth(given)).stream()
                        .filter(file.missing()::contains)
                        .toList())
                .orElse(List.of());
    }

    /** Whether this person measured or signed the finding, and so may not decide. */
    public boolean hasMeasured(String person) {
        return file.testers().contains(name(person));
    }

    /** Rules of cover that speak against an outcome; whoever signs it all the same says why. */
    public static List<String> against(CoverageAssessment assessment, Outcome outcome) {
        Stream<CoverageAssessment.Line> lines =
                assessment.lines().stream().filter(line -> FOR_COVER.contains(line.rule()));
        return switch (outcome) {
            case APPROVE ->
                lines.filter(line -> line.holds() == Holds.NO)
                        .map(CoverageAssessment.Line::rule)
                        .toList();
            case DENY -> {
                List<CoverageAssessment.Line> all = lines.toList();
                yield all.stream().allMatch(line -> line.holds() == Holds.YES)
                        ? all.stream().map(CoverageAssessment.Line::rule).toList()
                        : List.of();
            }
            case GOODWILL, REFER -> List.of();
        };
    }

    /** The larger of what is claimed and what is given. */
    private Optional<Amount> worth(Optional<Amount> given) {
        return Stream.of(file.intake().value(), given).flatMap(Optional::stream).max(Amount::compareTo);
    }

    private static String name(String typed) {
        return typed.strip().replaceAll("\\s+", " ");
    }
}
