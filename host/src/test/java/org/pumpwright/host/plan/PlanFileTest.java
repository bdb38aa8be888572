package org.pumpwright.host.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.EditedFile;
import org.pumpwright.host.quantity.Duty;

class PlanFileTest {
    private static final Path QUICK = EditedFile.fixture("plans/quick-12v-pump.yaml");
    private static final String DUTIES = "[20, 30, 50, 75, 100]";

    @TempDir
    private Path folder;

    private EditedFile quick;

    @BeforeEach
    void copy() {
        quick = new EditedFile(QUICK, folder);
    }

    @Test
    void theQuickPlanIsReadInFull() throws DataFileException {
        Plan plan = PlanFile.read(QUICK);
        assertThat(plan.label()).isEqualTo("quick-12v-pump v3");
        assertThat(plan.title()).isEqualTo("Quick acceptance sweep for a 12 V pump");
        assertThat(plan.kind()).isEqualTo(UnitKind.PUMP_12V);
        assertThat(plan.judged()).containsExactly(Duty.ofPercent(30), Duty.ofPercent(50), Duty.FULL);
        assertThat(plan.wiring()).isEqualTo(new Plan.Wiring(0, 0));
        assertThat(plan.needsReliefCheck()).isFalse();
        assertThat(plan.steps()).singleElement().isInstanceOfSatisfying(Sweep.class, sweep -> {
            assertThat(sweep.rampSeconds()).isEqualTo(0.5);
            assertThat(sweep.settle()).isEqualTo(new Settle(1, 10, 0.005));
            assertThat(sweep.measure()).isEqualTo(new Measure(1, 50, 0.001, 10));
        });
        assertThat(plan.stop().supplyAmpsAbove()).isEqualTo(28);
        assertThat(plan.stop().forSeconds()).isEqualTo(0.2);
        assertThat(plan.stop().voltsAtPinsBelow()).isEqualTo(9);
        // 120 psi of 6894.757 Pa (NIST SP 811, appendix B)
        assertThat(plan.stop().pressureAbovePascals()).isCloseTo(827_370.9, within(0.1));
        assertThat(plan.stop().runSecondsAbove()).isEqualTo(240);
    }

    @Test
    void theWayDownEndsAtTheSecondPointWhereTheFirstIsRepeated() throws DataFileException {
        assertThat(visits(QUICK))
                .containsExactly(
                        "1 UP 20",
                        "2 UP 30",
                        "3 UP 50",
                        "4 UP 75",
                        "5 UP 100",
                        "6 DOWN 75",
                        "7 DOWN 50",
                        "8 DOWN 30",
                        "9 REPEAT 20");
    }

    @Test
    void theWayDownEndsAtTheFirstPointWhereThatIsNotRepeated() throws DataFileException {
        assertThat(visits(quick.with("repeat_first: true", "repeat_first: false")))
                .containsExactly(
                        "1 UP 20",
                        "2 UP 30",
                        "3 UP 50",
                        "4 UP 75",
                        "5 UP 100",
                        "6 DOWN 75",
                        "7 DOWN 50",
                        "8 DOWN 30",
                        "9 DOWN 20");
    }

    @Test
    void theFirstPointMayBeRepeatedWithoutAWayDown() throws DataFileException {
        assertThat(visits(quick.with("down: true", "down: false")))
                .containsExactly("1 UP 20", "2 UP 30", "3 UP 50", "4 UP 75", "5 UP 100", "6 REPEAT 20");
    }

    @Test
    void aSinglePointHasNoWayDown() throws DataFileException {
        Path file = new EditedFile(quick.with(DUTIES, "[50]"), folder).with("[30, 50, 100]", "[50]");
        assertThat(visits(file)).containsExactly("1 UP 50", "2 REPEAT 50");
    }

    @Test
    void dutiesThatDoNotAscendAreRefusedWithTheirLine() {
        assertRefused(
                quick.with(DUTIES, "\n        - 20\n        - 30\n        - 50\n        - 30.0\n        - 100"),
                ":17: steps[0].sweep.duty_percent[3] is 30.0, it must lie above the one before it, 50 (%)");
    }

    @Test
    void aJudgedPointThatIsNeverVisitedIsRefused() {
        assertRefused(
                quick.with("[30, 50, 100]", "[30, 55, 100]"),
                ":9: judge_percent[1] is 55, it must be one of a sweep's duty_percent");
    }

    @Test
    void givingUpBeforeTheLeastWaitIsRefused() {
        assertRefused(
                quick.with("give_up_seconds: 10", "give_up_seconds: 0.5"),
                ":19: steps[0].sweep.settle.give_up_seconds is 0.5, it must be at least settle.least_seconds, 1 (s)");
    }

    @Test
    void aLongestMeasurementBelowTheShortestIsRefused() {
        assertRefused(
                quick.with("most_seconds: 10", "most_seconds: 0.5"),
                ":25: steps[0].sweep.measure.most_seconds is 0.5, it must be at least measure.least_seconds, 1 (s)");
    }

    @Test
    void aRunThatCouldNeverEndInTimeIsRefused() {
        assertRefused(
                quick.with("run_seconds_above: 240", "run_seconds_above: 20"),
                ":32: stop.run_seconds_above is 20, but the plan's steps need at least 22.5 (s)");
    }

    @Test
    void allThatIsWrongIsToldAtOnce() throws Exception {
        Path bad = Path.of(PlanFileTest.class.getResource("bad.yaml").toURI());
        assertRefused(bad, """
                :2: plan is "Bad Plan", allowed is 1 to 40 small letters, digits, points and dashes
                :3: version is 0, allowed is whole numbers from 1 to 9999
                :4: title is 12 (a number), allowed is text of 1 to 80 characters; for text put it in quotes
                :5: kind is "valve-12v", allowed is pump-12v, hydraulic-pump, driver, meter or harness
                :6: wiring.meter is missing, add it: allowed is whole numbers from 0 to 1
                :6: wiring.drive is 2, allowed is whole numbers from 0 to 1
                :7: judge_percent is 30, allowed is a list of 0 to 100 (%)
                :9: steps[0].sweep.repeat_first is missing, add it: allowed is true or false
                :9: steps[0].sweep.ramp_seconds is missing, add it: allowed is 0.01 to 60 (s)
                :10: steps[0].sweep.name is "Sweep one", allowed is 1 to 40 small letters, digits and dashes
                :11: steps[0].sweep.duty_percent[1] is 130, allowed is 1 to 100 (%)
                :11: steps[0].sweep.duty_percent[2] is "NO" (text), allowed is 1 to 100 (%)
                :12: steps[0].sweep.down is "yes" (text), allowed is true or false
                :13: steps[0].sweep.ramp_second is not known here; did you mean ramp_seconds?
                :15: steps[0].sweep.settle.least_seconds is -2, allowed is 0.1 to 60 (s)
                :18: steps[0].sweep.settle.give_up_seconds is given a second time, the first is in line 16
                :21: steps[0].sweep.measure.least_pulses is 200.5, allowed is whole numbers from 0 to 1000000 (pulses)
                :22: steps[0].sweep.measure.most_seconds is "20" (text), allowed is 0.5 to 3600 (s); write it as a plain \
                number
                :23: steps[1] is a group of keys, allowed is one of the keys sweep, ramp, hold, ask
                :23: steps[1].hold.seconds is 0, allowed is 0.05 to 7200 (s)
                :24: steps[1].ramp.from_percent is missing, add it: allowed is 0 to 100 (%)
                :24: steps[1].ramp.to_percent is missing, add it: allowed is 0 to 100 (%)
                :24: steps[1].ramp.percent_per_second is missing, add it: allowed is 0.05 to 100 (%/s)
                :24: steps[1].ramp.back is missing, add it: allowed is true or false
                :25: steps[2].wait is not known here; known are sweep, ramp, hold, ask
                :26: stop is "none" (text), allowed is a group of the keys supply_amps_above, for_seconds, \
                volts_at_pins_below, pressure_psi_above, run_seconds_above""");
    }

    @Test
    void eachKindOfStepIsRead() throws Exception {
        Plan plan = PlanFile.read(
                Path.of(PlanFileTest.class.getResource("steps.yaml").toURI()));

        assertThat(plan.needsReliefCheck()).isTrue();
        assertThat(plan.wiring()).isEqualTo(new Plan.Wiring(1, 1));
        assertThat(plan.steps())
                .containsExactly(
                        new Ask(
                                "outlet",
                                "Close the outlet valve by hand.",
                                List.of(
                                        new Ask.Answer("done", Optional.empty()),
                                        new Ask.Answer(
                                                "cannot",
                                                Optional.of(new Ask.End(
                                                        Ask.Blame.STAND, "the outlet valve does not close"))),
                                        new Ask.Answer(
                                                "leaks", Optional.of(new Ask.End(Ask.Blame.UNIT, "the unit leaks")))),
                                Map.of("outlet", 0.0)),
                        new Hold("dead-head", Reading.DEAD_HEAD, Duty.FULL, 4, 0.5, 1, 0, 0),
                        new Hold("starts", Reading.STARTS, Duty.ofPercent(50), 3, 0.2, 10, 2.5, 300),
                        new Ramp("thresholds", Duty.ofPercent(5), Duty.ofPercent(30), 1, true));
        assertThat(plan.leastSeconds()).isEqualTo(4 + 10 * 5.5 + 2 * 25, within(1e-9));
    }

    @Test
    void stepsThatCannotBeAreRefusedWithTheirLine() throws Exception {
        Path good = Path.of(PlanFileTest.class.getResource("steps.yaml").toURI());
        EditedFile steps = new EditedFile(good, folder);
        assertRefused(
                steps.with("to_percent: 30", "to_percent: 5"),
                ":39: steps[3].ramp.to_percent is 5, it must lie above from_percent, 5 (%)");
        assertRefused(
                steps.with("name: starts", "name: dead-head"),
                ":28: steps[2].hold.name is \"dead-head\", which is taken in line 22 already");
        assertRefused(
                steps.with("because: the unit leaks", ""),
                ":16: steps[0].ask.answers[2].word ends the run, so it needs because: the reason for the record");
    }

    @Test
    void aClosedOutletWithoutAReliefCheckIsRefused() throws Exception {
        assertRefused(
                steps().with("needs_relief_check: true", ""),
                ":23: steps[1].hold.reads is \"dead-head\", so the plan must say needs_relief_check: true");
    }

    @Test
    void aClosedOutletIsHeldForFiveSecondsAtMost() throws Exception {
        assertRefused(
                steps().with("seconds: 4", "seconds: 5.5"),
                ":25: steps[1].hold.seconds is 5.5, but a closed outlet may be held for 5 (s) at most");
    }

    @Test
    void aHoldMayEndTheRunAboveACurrent() throws Exception {
        Path file = steps().with("times: 10", "times: 10\n      ends_above_amps: 0.5");
        assertThat(PlanFile.read(file).steps().get(2))
                .isEqualTo(new Hold("starts", Reading.STARTS, Duty.ofPercent(50), 3, 0.2, 10, 2.5, 300, 0.5));
        assertRefused(
                steps().with("times: 10", "ends_above_amps: 0"),
                ":33: steps[2].hold.ends_above_amps is 0, allowed is 0.05 to 100 (A)");
    }

    private EditedFile steps() throws Exception {
        return new EditedFile(
                Path.of(PlanFileTest.class.getResource("steps.yaml").toURI()), folder);
    }

    private static void assertRefused(Path file, String problems) {
        String message = file + problems.replace("\n", "\n" + file);
        assertThatThrownBy(() -> PlanFile.read(file))
                .isInstanceOf(DataFileException.class)
                .hasMessage(message);
    }

    private static List<String> visits(Path file) throws DataFileException {
        return PlanFile.read(file).points().stream()
                .map(point -> String.format(
                        Locale.ROOT,
                        "%d %s %.0f",
                        point.number(),
                        point.leg(),
                        point.duty().percent()))
                .toList();
    }
}
