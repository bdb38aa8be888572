package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.cause.NextStep;
import org.pumpwright.host.grade.cause.NextStep.Means;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.rule.PassNeed;

/** How what a grade asks for next is carried out. */
final class NextStepsTest {
    private static NextStep after(UnitKind kind, Verdict verdict, String next) {
        return NextSteps.after(kind, new Grade(verdict, List.of(), List.of(), List.of(), List.of(), next, "", false));
    }

    @Test
    void plansThatAreNamedAreMeantInTheirOrder() {
        assertThat(after(UnitKind.PUMP_12V, Verdict.INCONCLUSIVE, "run the plan wiggle-12v-pump or restart-12v-pump"))
                .isEqualTo(new NextStep(Means.PLAN, List.of("wiggle-12v-pump", "restart-12v-pump")));
    }

    @ParameterizedTest
    @EnumSource(UnitKind.class)
    void everyRungOfTheShopsLadderRepeatsThePlanUntilAPersonDecides(UnitKind kind) throws Exception {
        GradingRules rules = new Shelf(Firmware.root().resolve("fixtures")).rules(kind.word());
        int last = rules.decision().mostRetests() + 1;
        for (int attempt = 1; attempt < last; attempt++) {
            assertThat(after(kind, Verdict.INCONCLUSIVE, Ladder.next(rules, attempt)))
                    .isEqualTo(NextStep.AGAIN);
        }
        assertThat(after(kind, Verdict.INCONCLUSIVE, Ladder.next(rules, last))).isEqualTo(NextStep.HANDS);
    }

    @ParameterizedTest
    @EnumSource(UnitKind.class)
    void everyPlanThatAComplaintNeedsIsOneOfTheShops(UnitKind kind) throws Exception {
        Shelf shelf = new Shelf(Firmware.root().resolve("fixtures"));
        for (PassNeed need : shelf.rules(kind.word()).passNeeds()) {
            for (String plan : need.plans()) {
                assertThat(shelf.plan(plan).id()).isEqualTo(plan);
            }
        }
    }

    @Test
    void aRunThatDoesNotCountIsMadeAgainWhateverItsRemedySays() {
        assertThat(after(UnitKind.METER, Verdict.INVALID, "charge the battery")).isEqualTo(NextStep.AGAIN);
    }

    @Test
    void whatTheGraderSaysWithoutACauseIsInTheTable() {
        String look = "no known pattern fits: check lead and plug, look at the unit, then run the full plan once more";
        assertThat(after(UnitKind.PUMP_12V, Verdict.FAIL, look).plans()).containsExactly("full-12v-pump");
        assertThat(after(UnitKind.DRIVER, Verdict.FAIL, look)).isEqualTo(NextStep.AGAIN);
        assertThat(
                        after(
                                UnitKind.PUMP_12V,
                                Verdict.FAIL,
                                "do not drive it again: turn it by hand with the plug off, rinse it with warm water, then run the full test"))
                .isEqualTo(NextStep.HANDS);
    }

    @Test
    void afterAPassNothingIsBegun() {
        assertThat(after(UnitKind.PUMP_12V, Verdict.PASS, "")).isEqualTo(NextStep.HANDS);
        assertThat(after(UnitKind.PUMP_12V, Verdict.NOT_TESTED, "look at the readings"))
                .isEqualTo(NextStep.HANDS);
    }
}
