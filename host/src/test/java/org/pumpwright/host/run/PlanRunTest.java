package org.pumpwright.host.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.PlanFile;
import org.pumpwright.host.plan.StopRules;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.run.RunEvent.PointDone;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Journal;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.protocol.ResetCause;

@Timeout(60)
final class PlanRunTest {
    private final StandDescription description = TestStands.described("simulated");
    private final List<RunEvent> heard = new ArrayList<>();
    private final StopButton stop = new StopButton();
    private Operator operator = Operator.NOBODY;

    private SimulatedBoard board;
    private SimulatedLine line;

    private RunOutcome run(Plant plant, Plan plan, Consumer<RunEvent> meanwhile) throws Exception {
        board = new SimulatedBoard(plant, description.channels());
        line = new SimulatedLine(board, 0);
        try (WireStand stand = new WireStand(description, () -> line, WireTiming.STANDARD)) {
            stand.open();
            RunListener listener = event -> {
                heard.add(event);
                meanwhile.accept(event);
            };
            return new PlanRun(stand, plan, listener, stop, operator, Journal.NONE).carryOut();
        }
    }

    private static Plan quick() throws Exception {
        return PlanFile.read(Firmware.root().resolve("fixtures/plans/quick-12v-pump.yaml"));
    }

    private static Plan withStop(Plan plan, StopRules rules) {
        return new Plan(
                plan.id(),
                plan.version(),
                plan.title(),
                plan.kind(),
                plan.needsReliefCheck(),
                plan.wiring(),
                plan.steps(),
                plan.judged(),
                rules);
    }

    private static Consumer<RunEvent> afterPoint(int number, Runnable action) {
        return event -> {
            if (event instanceof PointDone done && done.point().number() == number) {
                action.run();
            }
        };
    }

    private static Consumer<RunEvent> nothing() {
        return event -> {};
    }

    @Test
    void aHealthyPumpVisitsEveryPointUpAndDownAndTheFirstAgain() throws Exception {
        RunOutcome outcome = run(TestStands.healthyPump(), quick(), nothing());

        assertThat(outcome.ending().completed()).isTrue();
        assertThat(outcome.safe()).isEqualTo(SafeState.CONFIRMED);
        assertThat(outcome.samplesLost()).isZero();
        assertThat(outcome.trace().points())
                .extracting(PointMark::leg)
                .containsExactly(Leg.UP, Leg.UP, Leg.UP, Leg.UP, Leg.UP, Leg.DOWN, Leg.DOWN, Leg.DOWN, Leg.REPEAT);
        assertThat(outcome.trace().points())
                .extracting(point -> point.commanded().percent())
                .usingElementComparator((a, b) -> Math.abs(a - b) < 0.01 ? 0 : 1)
                .containsExactly(20.0, 30.0, 50.0, 75.0, 100.0, 75.0, 50.0, 30.0, 20.0);
        assertThat(outcome.trace().points()).allMatch(point -> point.settled() && point.enoughPulses());
        assertThat(outcome.trace().points()).allMatch(point -> point.measuredSeconds() >= 1);
    }

    @Test
    void theTraceBeginsAtRestWithTheContactorClosed() throws Exception {
        RunOutcome outcome = run(TestStands.healthyPump(), quick(), nothing());

        List<Sample> rest =
                outcome.trace().between(0, outcome.trace().points().get(0).setNanos());
        assertThat(rest).hasSizeGreaterThan(50).allMatch(Sample::armed);
        assertThat(rest).allMatch(sample -> sample.applied().get(0).equals(Duty.ZERO));
        assertThat(rest).allMatch(sample -> sample.analogs().get(0).mean() > 40_000);
    }

    @Test
    void aSeizedPumpIsStoppedByTheBoardAndThatSpeaksOfTheUnit() throws Exception {
        RunOutcome outcome = run(TestStands.pump(PumpFault.SEIZED, Severity.SEVERE), quick(), nothing());

        assertThat(outcome.ending().kind()).isEqualTo(Ending.Kind.UNIT_OUT_OF_BOUNDS);
        assertThat(outcome.ending().reason()).contains(" A");
        assertThat(outcome.safe()).isEqualTo(SafeState.CONFIRMED);
    }

    @Test
    void aPersonWhoStopsEndsTheRunWithWhatWasMeasuredUntilThen() throws Exception {
        RunOutcome outcome =
                run(TestStands.healthyPump(), quick(), afterPoint(2, () -> stop.press("the hose came off")));

        assertThat(outcome.ending()).isEqualTo(new Ending(Ending.Kind.STOPPED_BY_PERSON, "the hose came off"));
        assertThat(outcome.trace().points()).hasSize(2);
        assertThat(outcome.safe()).isEqualTo(SafeState.CONFIRMED);
    }

    @Test
    void aStopBeforeTheBeginningLetsNothingMove() throws Exception {
        stop.press("not yet");

        RunOutcome outcome = run(TestStands.healthyPump(), quick(), nothing());

        assertThat(outcome.ending().kind()).isEqualTo(Ending.Kind.STOPPED_BY_PERSON);
        assertThat(outcome.trace().samples()).isEmpty();
    }

    @Test
    void anOpenGuardEndsTheRun() throws Exception {
        RunOutcome outcome = run(TestStands.healthyPump(), quick(), afterPoint(1, () -> board.setInputs(true, false)));

        assertThat(outcome.ending()).isEqualTo(new Ending(Ending.Kind.STOPPED_BY_BOARD, "the guard was opened"));
    }

    @Test
    void aGuardThatIsOpenFromTheBeginningIsTheStandsTrouble() throws Exception {
        board = new SimulatedBoard(TestStands.healthyPump(), description.channels());
        board.setInputs(true, false);
        try (WireStand stand = new WireStand(description, () -> new SimulatedLine(board, 0), WireTiming.STANDARD)) {
            stand.open();

            RunOutcome outcome = new PlanRun(stand, quick(), heard::add, stop, operator, Journal.NONE).carryOut();

            assertThat(outcome.ending().kind()).isEqualTo(Ending.Kind.STAND_UNFIT);
            assertThat(outcome.ending().reason()).endsWith("the guard is open. Close it and start again.");
        }
    }

    @Test
    void aBoardThatStartsAnewEndsTheRun() throws Exception {
        RunOutcome outcome =
                run(TestStands.healthyPump(), quick(), afterPoint(3, () -> board.reset(ResetCause.WATCHDOG)));

        assertThat(outcome.ending().kind()).isEqualTo(Ending.Kind.STAND_LOST);
        assertThat(outcome.ending().reason()).contains("the board has started anew (watchdog)");
        assertThat(outcome.trace().points()).hasSize(3);
    }

    @Test
    void aPulledPlugEndsTheRunAndNobodyCanConfirmThatItIsSafe() throws Exception {
        RunOutcome outcome = run(TestStands.healthyPump(), quick(), afterPoint(3, () -> line.unplug()));

        assertThat(outcome.ending().kind()).isEqualTo(Ending.Kind.STAND_LOST);
        assertThat(outcome.safe()).isEqualTo(SafeState.NOT_CONFIRMED);
        assertThat(outcome.trace().points()).hasSize(3);
        assertThat(heard.get(heard.size() - 1)).isInstanceOf(RunEvent.Ended.class);
    }

    @Test
    void thePlansOwnStopRulesAreKept() throws Exception {
        StopRules as = quick().stop();
        Plan amps = withStop(quick(), new StopRules(5, 0.2, 9, as.pressureAbovePascals(), 300));
        Plan volts = withStop(quick(), new StopRules(28, 0.2, 13.5, as.pressureAbovePascals(), 300));
        Plan pressure = withStop(quick(), new StopRules(28, 0.2, 9, 100_000, 300));
        Plan time = withStop(quick(), new StopRules(28, 0.2, 9, as.pressureAbovePascals(), 20));

        assertThat(run(TestStands.healthyPump(), amps, nothing()).ending())
                .satisfies(e -> assertThat(e.kind()).isEqualTo(Ending.Kind.UNIT_OUT_OF_BOUNDS))
                .satisfies(e -> assertThat(e.reason()).endsWith("A for 0.2 s, the plan allows 5.0 A"));
        assertThat(run(TestStands.healthyPump(), volts, nothing()).ending())
                .satisfies(e -> assertThat(e.kind()).isEqualTo(Ending.Kind.STAND_UNFIT))
                .satisfies(e -> assertThat(e.reason()).startsWith("the volts at the pins fell to 13."));
        assertThat(run(TestStands.healthyPump(), pressure, nothing()).ending())
                .satisfies(e -> assertThat(e.kind()).isEqualTo(Ending.Kind.STAND_UNFIT))
                .satisfies(e -> assertThat(e.reason()).startsWith("the outlet pressure rose to 1"));
        assertThat(run(TestStands.healthyPump(), time, nothing()).ending())
                .isEqualTo(new Ending(Ending.Kind.STAND_UNFIT, "the run took more than the 20 s that the plan allows"));
    }

    @Test
    void aFaultOfTheProgramEndsSafeWithWhatWasMeasured() throws Exception {
        RunOutcome outcome = run(TestStands.healthyPump(), quick(), afterPoint(2, () -> {
            throw new IllegalStateException("broken on purpose");
        }));

        assertThat(outcome.ending().kind()).isEqualTo(Ending.Kind.PROGRAM_FAULT);
        assertThat(outcome.ending().reason()).contains("broken on purpose");
        assertThat(outcome.safe()).isEqualTo(SafeState.CONFIRMED);
        assertThat(outcome.trace().points()).hasSize(2);
    }

    @Test
    void liveValuesComeAtLeastFourTimesASecondAndTimeLeftRunsDown() throws Exception {
        run(TestStands.healthyPump(), quick(), nothing());

        List<RunEvent.Live> live = heard.stream()
                .filter(event -> event instanceof RunEvent.Live)
                .map(event -> (RunEvent.Live) event)
                .toList();
        assertThat(live).hasSizeGreaterThan(150);
        assertThat(live.get(0).secondsLeft())
                .isGreaterThan(live.get(live.size() - 1).secondsLeft());
    }
}
