package org.pumpwright.host.claim;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.claim.Observation.Seen;
import org.pumpwright.host.claim.Waiver.Step;
import org.pumpwright.host.grade.Verdict;

class FindingRulesTest {
    private static final Set<String> PROVOKING = Set.of("wiggle-12v-pump", "soak-12v-pump");

    private static void check(InventedClaim claim, Category category, Reproduced reproduced) throws RefusedException {
        FindingRules.of(claim.file(), PROVOKING).check(category, reproduced, Optional.empty());
    }

    @Test
    void outsideLimitsNeedsARunThatFoundIt() {
        InventedClaim passed = new InventedClaim().run("full-12v-pump", Verdict.PASS);
        assertThatThrownBy(() -> check(passed, Category.C2, Reproduced.NO))
                .isInstanceOf(RefusedException.class)
                .hasMessage(
                        "C2 can't be signed for claim EX-1: it says outside limits, and no run on record found that. Runs on record: run-1 full-12v-pump v1 PASS.");
        InventedClaim failed = new InventedClaim().run("full-12v-pump", Verdict.FAIL);
        assertThatCode(() -> check(failed, Category.C8, Reproduced.YES)).doesNotThrowAnyException();
    }

    @Test
    void withinLimitsIsRefusedWhenARunFailed() {
        InventedClaim claim =
                new InventedClaim().run("full-12v-pump", Verdict.FAIL).run("full-12v-pump", Verdict.PASS);
        assertThatThrownBy(() -> check(claim, Category.C7, Reproduced.NO))
                .hasMessageContaining("run run-1 found the unit outside");
    }

    @Test
    void causeFoundElsewhereNeedsThePlanterCheck() {
        InventedClaim claim = new InventedClaim().run("full-12v-pump", Verdict.PASS);
        assertThatThrownBy(() -> check(claim, Category.C7, Reproduced.NO)).hasMessageContaining("--seen planter-check");
        assertThatCode(() -> check(claim.seen(Seen.PLANTER_CHECK), Category.C7, Reproduced.NO))
                .doesNotThrowAnyException();
    }

    @Test
    void aSymptomThatDidNotShowIsClosedOnlyAfterItWasProvokedOrSomebodyAnswers() {
        InventedClaim claim = new InventedClaim().run("full-12v-pump", Verdict.PASS);
        assertThatThrownBy(() -> check(claim, Category.C4, Reproduced.NO))
                .hasMessageContaining("Run one of: soak-12v-pump, wiggle-12v-pump")
                .hasMessageContaining("--declined-by NAME --reason TEXT");
        Waiver waiver = new Waiver(Step.INTERMITTENT_PLAN, "Kim", "spring rush", InventedClaim.DAY);
        assertThatCode(() ->
                        FindingRules.of(claim.file(), PROVOKING).check(Category.C4, Reproduced.NO, Optional.of(waiver)))
                .doesNotThrowAnyException();
        assertThatCode(() -> check(claim.run("wiggle-12v-pump", Verdict.PASS), Category.C4, Reproduced.NO))
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> check(claim, Category.C4, Reproduced.YES)).hasMessageContaining("--reproduced no");
    }

    @Test
    void inconclusiveNeedsARunThatCouldNotTell() {
        InventedClaim claim = new InventedClaim().run("full-12v-pump", Verdict.PASS);
        assertThatThrownBy(() -> check(claim, Category.C5, Reproduced.NO)).hasMessageContaining("no run on record was");
        claim.run("full-12v-pump", Verdict.INCONCLUSIVE);
        assertThatCode(() -> check(claim, Category.C5, Reproduced.PARTLY)).doesNotThrowAnyException();
        assertThatThrownBy(() -> check(claim, Category.C4, Reproduced.NO))
                .hasMessageContaining("could not tell: run-2");
    }

    @Test
    void aUnitThatWasTestedIsNotCalledNotTestable() {
        assertThatCode(() -> check(
                        new InventedClaim().run("full-12v-pump", Verdict.INVALID),
                        Category.C6,
                        Reproduced.NOT_ATTEMPTED))
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> check(new InventedClaim(), Category.C6, Reproduced.NO))
                .hasMessageContaining("--reproduced not-attempted");
        assertThatThrownBy(() -> check(
                        new InventedClaim().run("full-12v-pump", Verdict.PASS), Category.C6, Reproduced.NOT_ATTEMPTED))
                .hasMessageContaining("the unit was tested");
    }
}
