package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.ui.WindowTest;

/** What can be begun as the next test. */
final class NextPlanTest {
    @TempDir
    Path records;

    private Shelf shelf;
    private List<Plan> plans;

    @BeforeEach
    void read() throws Exception {
        shelf = WindowTest.services(records).shelf();
        plans = shelf.plans();
    }

    private static Grade grade(Verdict verdict, String test) {
        return new Grade(verdict, List.of(), List.of(), List.of(), List.of(), test, "", false);
    }

    private NextPlan next(String done, Verdict verdict, String test) throws Exception {
        return NextPlan.of(grade(verdict, test), shelf.plan(done), plans);
    }

    private Optional<String> plan(String done, Verdict verdict, String test) throws Exception {
        return next(done, verdict, test).plan().map(Plan::id);
    }

    @Test
    void aTestThatAPlanCarriesOutBeginsThatPlan() throws Exception {
        assertThat(plan(
                        "quick-12v-pump",
                        Verdict.FAIL,
                        "bend the lead at plug and strain relief while it runs at 50 %, and watch the current"))
                .contains("wiggle-12v-pump");
        assertThat(
                        plan(
                                "valve-sweep",
                                Verdict.FAIL,
                                "open the mechanical override slowly with the oil on low: no flow means spool, supply, motor or pump"))
                .contains("override-split");
    }

    @Test
    void aPlanThatTheShopHasNotGotIsSaidAndNotBegun() throws Exception {
        NextPlan next = NextPlan.of(
                grade(Verdict.INCONCLUSIVE, "run the plan soak-12v-pump"), shelf.plan("quick-12v-pump"), List.of());

        assertThat(next.begins()).isFalse();
        assertThat(next.how().key()).isEqualTo("ui.verdict.how.no_plan");
    }

    @Test
    void theMeterGoesToTheBucket() throws Exception {
        NextPlan next = next("quick-12v-pump", Verdict.FAIL, "check the meter with the bucket");

        assertThat(next.begins()).isTrue();
        assertThat(next.plan()).isEmpty();
    }

    @Test
    void aRunThatDoesNotCountIsRepeatedByItsPlan() throws Exception {
        assertThat(plan("harness-drop", Verdict.INVALID, "clean the lead")).contains("harness-drop");
    }

    @Test
    void aTestForHandsBeginsNothing() throws Exception {
        assertThat(next("quick-12v-pump", Verdict.FAIL, "look at the arrow").begins())
                .isFalse();
        assertThat(next("quick-12v-pump", Verdict.PASS, "").begins()).isFalse();
    }
}
