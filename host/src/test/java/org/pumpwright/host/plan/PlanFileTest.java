package org.pumpwright.host.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
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
        assertThat(plan.label()).isEqualTo("quick-12v-pump v1");
        assertThat(plan.title()).isEqualTo("Quick acceptance sweep for a 12 V pump");
        assertThat(plan.kind()).isEqualTo(UnitKind.PUMP_12V);
        assertThat(plan.judged()).containsExactly(Duty.ofPercent(30), Duty.ofPercent(50), Duty.FULL);
        assertThat(plan.rampSeconds()).isEqualTo(0.5);
        assertThat(plan.settle()).isEqualTo(new Plan.Settle(2, 10, 0.005));
        assertThat(plan.measure()).isEqualTo(new Plan.Measure(5, 200, 20));
        assertThat(plan.stop().supplyAmpsAbove()).isEqualTo(28);
        assertThat(plan.stop().forSeconds()).isEqualTo(0.2);
        assertThat(plan.stop().voltsAtPinsBelow()).isEqualTo(9);
        // 120 psi of 6894.757 Pa (NIST SP 811, appendix B)
        assertThat(plan.stop().pressureAbovePascals()).isCloseTo(827_370.9, within(0.1));
        assertThat(plan.stop().runSecondsAbove()).isEqualTo(300);
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
                quick.with(DUTIES, "\n  - 20\n  - 30\n  - 50\n  - 30.0\n  - 100"),
                ":12: duty_percent[3] is 30.0, it must lie above the one before it, 50 (%)");
    }

    @Test
    void aJudgedPointThatIsNeverVisitedIsRefused() {
        assertRefused(
                quick.with("[30, 50, 100]", "[30, 55, 100]"),
                ":9: judge_percent[1] is 55, it must be one of duty_percent");
    }

    @Test
    void givingUpBeforeTheLeastWaitIsRefused() {
        assertRefused(
                quick.with("give_up_seconds: 10", "give_up_seconds: 1.5"),
                ":17: settle.give_up_seconds is 1.5, it must be at least settle.least_seconds, 2 (s)");
    }

    @Test
    void aLongestMeasurementBelowTheShortestIsRefused() {
        assertRefused(
                quick.with("most_seconds: 20", "most_seconds: 4"),
                ":23: measure.most_seconds is 4, it must be at least measure.least_seconds, 5 (s)");
    }

    @Test
    void aRunThatCouldNeverEndInTimeIsRefused() {
        assertRefused(
                quick.with("run_seconds_above: 300", "run_seconds_above: 62"),
                ":30: stop.run_seconds_above is 62, but the plan's 9 points need at least 63.0 (s)");
    }

    @Test
    void allThatIsWrongIsToldAtOnce() throws Exception {
        Path bad = Path.of(PlanFileTest.class.getResource("bad.yaml").toURI());
        assertRefused(bad, """
                :2: plan is "Bad Plan", allowed is 1 to 40 small letters, digits, points and dashes
                :2: ramp_seconds is missing, add it: allowed is 0.01 to 60 (s)
                :3: version is 0, allowed is whole numbers from 1 to 9999
                :4: title is 12 (a number), allowed is text of 1 to 80 characters; for text put it in quotes
                :5: kind is "valve-12v", allowed is pump-12v
                :6: duty_percent[1] is 130, allowed is 1 to 100 (%)
                :6: duty_percent[2] is "NO" (text), allowed is 1 to 100 (%)
                :7: judge_percent is a list of 0, allowed is a list of 1 to 100 (%)
                :8: sweep.repeat_first is missing, add it: allowed is true or false
                :9: sweep.down is "yes" (text), allowed is true or false
                :10: ramp_second is not known here; did you mean ramp_seconds?
                :12: settle.least_seconds is -2, allowed is 0.1 to 60 (s)
                :15: settle.give_up_seconds is given a second time, the first is in line 13
                :18: measure.least_pulses is 200.5, allowed is whole numbers from 2 to 1000000 (pulses)
                :19: measure.most_seconds is "20" (text), allowed is 0.5 to 3600 (s); write it as a plain number
                :20: stop is "none" (text), allowed is a group of the keys supply_amps_above, for_seconds, \
                volts_at_pins_below, pressure_psi_above, run_seconds_above""");
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
