package org.pumpwright.host.grade.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.cause.NextStep.Means;
import org.pumpwright.host.plan.Plan;

/** How the tests that the causes name are carried out. */
final class NextStepTest {
    private static List<String> all(NextStep.Table table) {
        List<String> all = new ArrayList<>(table.again());
        all.addAll(table.bucket());
        all.addAll(table.hands());
        table.plans().values().forEach(all::addAll);
        return all;
    }

    @ParameterizedTest
    @EnumSource(UnitKind.class)
    void everyTestThatACauseCanNameIsInTheTableOnce(UnitKind kind) {
        CauseTexts texts = CauseTexts.of(kind).orElseThrow();
        List<String> listed = all(NextStep.table(kind));
        List<String> named = new ArrayList<>();
        texts.causes().forEach(cause -> named.add(cause.nextTest()));
        texts.tests().forEach(test -> named.add(test.words()));
        CutShort.causes(true).listed().forEach(cause -> {
            if (kind == UnitKind.PUMP_12V) {
                named.add(cause.nextTest());
            }
        });

        assertThat(listed).containsAll(named);
        assertThat(new HashSet<>(listed)).hasSameSizeAs(listed);
    }

    @ParameterizedTest
    @EnumSource(UnitKind.class)
    void everyPlanOfTheTableIsOneOfTheShopsForThatKind(UnitKind kind) throws Exception {
        Shelf shelf = new Shelf(Firmware.root().resolve("fixtures"));
        for (String name : NextStep.table(kind).plans().keySet()) {
            Plan plan = shelf.plan(name);
            assertThat(plan.kind()).as(name).isEqualTo(kind);
        }
    }

    @Test
    void aTestThatNeedsAPlanNamesIt() {
        assertThat(NextStep.of(
                        UnitKind.PUMP_12V,
                        "bend the lead at plug and strain relief while it runs at 50 %, and watch the current"))
                .isEqualTo(new NextStep(Means.PLAN, List.of("wiggle-12v-pump")));
    }

    @Test
    void ofTwoTestsTheFirstThatCanBeBegunCounts() {
        String hands = "take it off the supply and measure from either lead to the case";
        String repeat = "set the supply right and repeat";

        assertThat(NextStep.of(UnitKind.PUMP_12V, hands + "; if that does not show it: " + repeat))
                .isEqualTo(NextStep.AGAIN);
        assertThat(
                        NextStep.of(
                                UnitKind.PUMP_12V,
                                hands
                                        + "; not read, and would name the cause more surely: the pressure against a closed outlet"))
                .isEqualTo(NextStep.HANDS);
    }

    @Test
    void aPumpThatMustNotBeDrivenAgainIsNotOfferedARun() {
        for (boolean finished : new boolean[] {true, false}) {
            Optional<String> test = CutShort.causes(finished).nextTest();

            assertThat(NextStep.of(UnitKind.PUMP_12V, test.orElseThrow())).isEqualTo(NextStep.HANDS);
        }
    }

    @Test
    void aSentenceThatIsNotKnownIsForHands() {
        assertThat(NextStep.of(UnitKind.METER, "ask the foreman")).isEqualTo(NextStep.HANDS);
    }
}
