package org.pumpwright.host.app.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.claim.DecisionNeeds.Need;
import org.pumpwright.host.app.claim.DecisionNeeds.Written;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.CoverageDecision.Outcome;
import org.pumpwright.host.claim.InventedClaim;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.RefusedException;
import org.pumpwright.host.claim.coverage.CoverageRules;
import org.pumpwright.host.claim.coverage.CoverageRulesFile;
import org.pumpwright.host.claim.coverage.DecisionRules;
import org.pumpwright.host.grade.Verdict;

/** By the invented example rules: photo of the plate and a run always, more from 500, two signers above 1000. */
final class DecisionNeedsTest {
    private static final List<String> NAMES = List.of("", "Kim Clerk", "terry  tester");
    private static final List<String> AMOUNTS = List.of("", "80", "700", "1200");

    private static CoverageRules rules() throws Exception {
        return CoverageRulesFile.read(
                Firmware.root().resolve("fixtures/coverage/example-2026.yaml"), "coverage/example-2026.yaml");
    }

    private static InventedClaim claim() {
        return new InventedClaim()
                .received("2026-03-02")
                .run("quick-12v-pump", Verdict.FAIL)
                .found(Category.C2, "Terry Tester", "valve plate");
    }

    private static Written written(Outcome outcome, String signer, String second, String amount) {
        return new Written(
                Optional.of(outcome),
                "worn early",
                signer,
                second,
                amount.isEmpty() ? Optional.empty() : Optional.of(Amount.of(amount)),
                "");
    }

    @Test
    void anEmptyDecisionNeedsOutcomeReasonAndSigner() throws Exception {
        DecisionNeeds needs = new DecisionNeeds(claim().file(), Optional.of(rules()));
        assertThat(needs.of(new Written(Optional.empty(), "", "", "", Optional.empty(), "")))
                .containsExactly(Need.OUTCOME, Need.REASON, Need.SIGNER);
    }

    @Test
    void attachmentsAreNeededToApproveAndNotForGoodwill() throws Exception {
        DecisionNeeds needs = new DecisionNeeds(claim().worth("80").file(), Optional.of(rules()));
        assertThat(needs.of(written(Outcome.APPROVE, "Kim Clerk", "", ""))).containsExactly(Need.ATTACHMENTS);
        assertThat(needs.of(written(Outcome.GOODWILL, "Kim Clerk", "", ""))).isEmpty();
    }

    @Test
    void whoMeasuredDoesNotSign() throws Exception {
        DecisionNeeds needs = new DecisionNeeds(claim().worth("80").file(), Optional.of(rules()));
        assertThat(needs.of(written(Outcome.GOODWILL, "terry  tester", "", ""))).containsExactly(Need.OTHER_SIGNER);
        assertThat(needs.of(written(Outcome.GOODWILL, "Kim Clerk", "kim clerk", "")))
                .containsExactly(Need.OTHER_SECOND);
    }

    /** What has no needs is what the rules of signing take, and the other way round. */
    @Test
    void noNeedsAndNoRefusalAreTheSame() throws Exception {
        CoverageRules rules = rules();
        List<ClaimFile> files = List.of(
                claim().file(),
                claim().photo(Photo.Shows.PLATE, "2026-03-02T10:00:00")
                        .worth("80")
                        .file(),
                claim().photo(Photo.Shows.PLATE, "2026-03-02T10:00:00")
                        .worth("1200")
                        .file());
        int taken = 0;
        for (ClaimFile file : files) {
            DecisionNeeds needs = new DecisionNeeds(file, Optional.of(rules));
            for (Outcome outcome : Outcome.values()) {
                for (String second : NAMES) {
                    for (String amount : AMOUNTS) {
                        Written written = written(outcome, "Lee Chief", second, amount);
                        boolean signs = signs(file, written, rules);
                        assertThat(needs.of(written).isEmpty())
                                .as("%s", written)
                                .isEqualTo(signs);
                        taken += signs ? 1 : 0;
                    }
                }
            }
        }
        assertThat(taken).isGreaterThan(10);
    }

    private static boolean signs(ClaimFile file, Written written, CoverageRules rules) {
        CoverageDecision decision = new CoverageDecision(
                written.outcome().orElseThrow(),
                written.reason(),
                written.signer(),
                written.second().isEmpty() ? Optional.empty() : Optional.of(written.second()),
                Optional.of(rules.label()),
                written.amount(),
                file.intake().received());
        try {
            DecisionRules.check(file, decision, Optional.of(rules));
            return true;
        } catch (RefusedException e) {
            return false;
        }
    }
}
