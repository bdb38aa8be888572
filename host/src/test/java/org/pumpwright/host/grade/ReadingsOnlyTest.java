package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

/** Runs of plans that judge nothing, sensors that lie, and where the rest is found. */
class ReadingsOnlyTest {
    private static Plan judgingNothing() {
        Plan plan = Bench.plan();
        return new Plan(
                plan.id(),
                plan.version(),
                plan.title(),
                plan.kind(),
                false,
                plan.wiring(),
                plan.steps(),
                List.of(),
                plan.stop());
    }

    private static Grade grade(Trace trace, Plan plan, Ending ending) {
        return Grader.grade(
                new GradingInput(trace, ending, plan, Optional.empty(), Bench.CONDITIONS, Bench.STAND, UnitSystem.US));
    }

    /** The same trace with a channel that reads what it is told, armed or not. */
    private static Trace reading(Trace trace, ChannelRole role, int code) {
        AnalogChannel channel = trace.channels().required(role);
        List<Sample> samples = trace.samples().stream()
                .map(sample -> {
                    List<AnalogReading> analogs = new ArrayList<>(sample.analogs());
                    analogs.set(channel.index(), new AnalogReading(code, code, code));
                    return new Sample(
                            sample.boardNanos(),
                            sample.meters(),
                            analogs,
                            sample.applied(),
                            sample.armed(),
                            sample.emergencyStopClosed(),
                            sample.guardClosed());
                })
                .toList();
        return new Trace(trace.channels(), samples, trace.points());
    }

    private static StandCheck check(Grade grade, String name) {
        return grade.standChecks().stream()
                .filter(check -> check.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPlanThatJudgesNothingGivesItsReadingsAndNoVerdict() {
        Grade grade = grade(SyntheticRun.healthy().trace(), judgingNothing(), Bench.COMPLETED);
        assertThat(grade.verdict()).isEqualTo(Verdict.NOT_TESTED);
        assertThat(grade.reasons()).containsExactly("this plan judges nothing; its readings are below");
        assertThat(grade.findings()).extracting(f -> f.name()).contains("hysteresis", "settling time");
    }

    @Test
    void aRunThatWasNotCompletedIsInvalidAllTheSame() {
        Ending stopped = new Ending(Ending.Kind.STOPPED_BY_PERSON, "stopped");
        assertThat(grade(SyntheticRun.healthy().trace(), judgingNothing(), stopped)
                        .verdict())
                .isEqualTo(Verdict.INVALID);
        Ending unit = new Ending(Ending.Kind.UNIT_OUT_OF_BOUNDS, "30 A");
        assertThat(grade(SyntheticRun.healthy().trace(), judgingNothing(), unit).verdict())
                .isEqualTo(Verdict.FAIL);
    }

    @Test
    void aJudgedRunHasFindingsToo() {
        assertThat(SyntheticRun.healthy().grade().findings()).isNotEmpty();
    }

    @Test
    void aCurrentSensorAtZeroVoltsIsNotHeldAgainstTheUnit() {
        Trace trace = reading(SyntheticRun.healthy().trace(), ChannelRole.SUPPLY_AMPS, 0);
        Grade grade = Grader.grade(Bench.input(trace, SyntheticRun.curve()));
        assertThat(grade.verdict()).isEqualTo(Verdict.INVALID);
        assertThat(check(grade, "current sensor").finding()).startsWith("0.00 A while water flows at ");
    }

    @Test
    void aPressureSensorFarBelowZeroOrAtTheRailIsNotHeldAgainstTheUnit() {
        for (int code : List.of(0, 65_535)) {
            Trace trace = reading(SyntheticRun.healthy().trace(), ChannelRole.OUTLET_PRESSURE, code);
            Grade grade = Grader.grade(Bench.input(trace, SyntheticRun.curve()));
            assertThat(grade.verdict()).isEqualTo(Verdict.INVALID);
            assertThat(check(grade, "pressure sensor").ok()).isFalse();
        }
    }

    @Test
    void theRestIsTheStretchThatTheTraceMarks() {
        Trace trace = SyntheticRun.healthy().trace();
        long from = trace.samples().get(3).boardNanos();
        long to = trace.samples().get(13).boardNanos();
        Trace marked = new Trace(
                trace.channels(),
                trace.samples(),
                trace.points(),
                List.of(new Stretch("rest", Stretch.Kind.REST, from, to)),
                List.of());
        assertThat(RestReading.of(marked).orElseThrow().seconds()).isEqualTo(0.2);
        assertThat(RestReading.of(trace).orElseThrow().seconds()).isGreaterThan(0.4);
    }
}
