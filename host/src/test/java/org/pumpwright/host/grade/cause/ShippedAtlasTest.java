package org.pumpwright.host.grade.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.catalog.UnitKind;

final class ShippedAtlasTest {
    private static Set<String> ids(UnitKind kind) {
        Set<String> ids = new LinkedHashSet<>();
        ids.add(CauseRanking.HEALTHY);
        Atlas.of(kind).orElseThrow().faults().forEach(fault -> ids.add(fault.id()));
        return ids;
    }

    @ParameterizedTest
    @EnumSource(UnitKind.class)
    void everyCauseOfAnAtlasHasItsWordsAndATest(UnitKind kind) {
        CauseTexts texts = CauseTexts.of(kind).orElseThrow();

        for (String id : ids(kind)) {
            CauseTexts.Text text = texts.text(id).orElseThrow(() -> new AssertionError("no words for " + id));
            assertThat(text.name()).isNotBlank();
            assertThat(text.pattern()).isNotBlank();
            assertThat(text.nextTest()).isNotBlank();
            assertThat(text.needs()).isNotEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(UnitKind.class)
    void everyTestTellsOnlyCausesThatThereAre(UnitKind kind) {
        for (CauseTexts.Test test : CauseTexts.of(kind).orElseThrow().tests()) {
            assertThat(ids(kind))
                    .as(test.words())
                    .containsAll(test.outcomes().stream()
                            .flatMap(outcome -> outcome.stream())
                            .toList());
        }
    }

    /** The pairs that a sweep alone does not separate. */
    @ParameterizedTest
    @CsvSource({
        "slip, lead-resistance",
        "dead-chamber, suction-air",
        "dead-chamber, recirculation-open",
        "suction-air, recirculation-open",
        "low-supply, brush",
        "bypass-low, healthy",
        "warm, shorted-turns",
        "warm, weak-magnets",
        "weak-magnets, shorted-turns"
    })
    void pairsThatASweepDoesNotSeparateHaveATestThatDoes(String one, String other) {
        assertThat(NextTest.splitting(
                        CauseTexts.of(UnitKind.PUMP_12V).orElseThrow().tests(), Map.of(one, 0.5, other, 0.5)))
                .isPresent();
    }

    @Test
    void theTestThatTellsMostIsChosen() {
        assertThat(NextTest.splitting(
                        CauseTexts.of(UnitKind.PUMP_12V).orElseThrow().tests(),
                        Map.of("warm", 0.6, "weak-magnets", 0.4)))
                .hasValueSatisfying(words -> assertThat(words).startsWith("let the motor cool"));
    }
}
