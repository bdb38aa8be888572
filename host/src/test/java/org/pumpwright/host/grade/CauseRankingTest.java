package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Ending;

/** Causes of failures whose figures are put straight from the atlas into the trace. */
class CauseRankingTest {
    private static final CauseAtlas ATLAS = CauseAtlas.standard();

    enum Told {
        SLIP("slip-back"),
        DEAD("dead-chamber"),
        DRAG("drag"),
        MAGNETS("weak-magnets"),
        BRUSH("brush"),
        TURNS("shorted-turns"),
        STRAINER("strainer"),
        RECIRCULATION("recirculation-open");

        private final CausePattern pattern;

        Told(String id) {
            pattern = ATLAS.causes().stream()
                    .filter(c -> c.id().equals(id))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static SyntheticRun with(CausePattern pattern, int severity) {
        SyntheticRun run = SyntheticRun.healthy();
        for (int i = 0; i < ATLAS.dutyPercent().size(); i++) {
            int duty = (int) Math.round(ATLAS.dutyPercent().get(i));
            run.flow(duty, 1 + pattern.severities().get(severity).flowPercent().get(i) / 100);
            run.amps(
                    duty,
                    1 + pattern.severities().get(severity).motorAmpsPercent().get(i) / 100);
        }
        return run;
    }

    @ParameterizedTest
    @EnumSource
    void aSevereFaultIsNamedFirst(Told told) {
        Grade grade = with(told.pattern, 2).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(grade.causes()).hasSizeBetween(1, 3);
        assertThat(grade.causes().get(0).name()).isEqualTo(told.pattern.name());
        assertThat(grade.causes().get(0).nextTest()).isEqualTo(told.pattern.nextTest());
    }

    @Test
    void aCauseIsBackedByTheFiguresThatPointToIt() {
        Grade grade = with(Told.DRAG.pattern, 1).grade();
        assertThat(grade.causes().get(0).because())
                .isEqualTo(
                        "flow 0 % at 20 %, -15 % at 50 %, -5 % at 100 %; motor amps 0 % at 20 %, +68 % at 50 %, +26 % at"
                                + " 100 %: flow is low and the current high, both worst at low set points");
        assertThat(grade.nextTest()).isEqualTo(Told.DRAG.pattern.nextTest());
    }

    @Test
    void causesThatCannotBeToldApartAreShownAsATieWithTheTestThatSplitsThem() {
        Grade grade = with(Told.RECIRCULATION.pattern, 0).grade();
        assertThat(grade.causes().get(0).name()).isEqualTo(Told.RECIRCULATION.pattern.name());
        assertThat(grade.causes().get(0).because()).startsWith("tied with the next; flow ");
        assertThat(grade.causes().get(1).name()).isEqualTo("the suction side draws air");
        assertThat(grade.causes().get(1).because()).startsWith("tied with the first; flow ");
        assertThat(grade.nextTest())
                .isEqualTo(
                        "close every recirculation valve fully and repeat; if nothing changes, watch the sight tube for"
                                + " bubbles");
    }

    @Test
    void theNozzleIsNotBlamedWhenItsCheckHeld() {
        CausePattern plugged = ATLAS.causes().stream()
                .filter(CausePattern::ruledOutByNozzleCheck)
                .findFirst()
                .orElseThrow();
        Grade checked = with(plugged, 1).grade();
        Grade unchecked = with(plugged, 1).without(ChannelRole.OUTLET_PRESSURE).grade();
        assertThat(checked.causes()).extracting(Cause::name).doesNotContain(plugged.name());
        assertThat(unchecked.causes().get(0).name()).isEqualTo(plugged.name());
    }

    @Test
    void fewerThanThreeSetPointsNameNoCause() {
        Ending ending = new Ending(Ending.Kind.UNIT_OUT_OF_BOUNDS, "the unit drew 29 A for 0.2 s");
        List<Cause> two = with(Told.DRAG.pattern, 2)
                .endsBefore(75)
                .grade(t -> Bench.input(t, ending, Optional.of(SyntheticRun.curve())))
                .causes();
        List<Cause> three = with(Told.DRAG.pattern, 2)
                .endsBefore(100)
                .grade(t -> Bench.input(t, ending, Optional.of(SyntheticRun.curve())))
                .causes();
        assertThat(two).isEmpty();
        assertThat(three).isNotEmpty();
    }

    @Test
    void aPatternThatNothingExplainsNamesNoCause() {
        Grade grade = SyntheticRun.healthy()
                .flow(30, 1.6)
                .flow(50, 0.4)
                .flow(75, 1.6)
                .flow(100, 0.4)
                .grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(grade.causes()).isEmpty();
        assertThat(grade.nextTest()).startsWith("no known pattern fits: ");
    }
}
