package org.pumpwright.host.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Measure;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.plan.Ramp;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.plan.Settle;
import org.pumpwright.host.plan.Step;
import org.pumpwright.host.plan.StopRules;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.run.RunEvent.PointDone;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Journal;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;

/** Each kind of step, on the simulated stand. */
@Timeout(60)
final class StepsTest {
    private static final Ask OUTLET = new Ask(
            "outlet",
            "Close the outlet.",
            List.of(
                    new Ask.Answer("done", Optional.empty()),
                    new Ask.Answer("leaks", Optional.of(new Ask.End(Ask.Blame.UNIT, "the unit leaks")))),
            Map.of());
    private static final Hold MOMENT = new Hold("moment", Reading.NOTHING, Duty.ofPercent(50), 1, 0.2, 1, 0.5, 0);

    private final StandDescription description = TestStands.described("simulated");
    private final List<RunEvent> heard = new ArrayList<>();
    private ScriptedOperator operator = new ScriptedOperator();

    private RunOutcome run(Step... steps) throws Exception {
        return run(300, steps);
    }

    private RunOutcome run(double mostSeconds, Step... steps) throws Exception {
        Plan plan = new Plan(
                "steps",
                1,
                "Steps",
                UnitKind.PUMP_12V,
                false,
                Plan.Wiring.PUMP,
                List.of(steps),
                List.of(),
                new StopRules(28, 0.2, 9, 900_000, mostSeconds));
        SimulatedBoard board = new SimulatedBoard(TestStands.healthyPump(), description.channels());
        try (WireStand stand = new WireStand(description, () -> new SimulatedLine(board, 0), WireTiming.STANDARD)) {
            stand.open();
            return new PlanRun(stand, plan, this::hear, new StopButton(), operator, Journal.NONE).carryOut();
        }
    }

    private void hear(RunEvent event) {
        heard.add(event);
        if (event instanceof PointDone done && done.point().number() == 1) {
            operator.pauseSoon();
        }
    }

    private static Sweep sweep(Measure measure, int... percents) {
        List<PlanPoint> points = new ArrayList<>();
        for (int percent : percents) {
            points.add(new PlanPoint(points.size() + 1, Leg.UP, Duty.ofPercent(percent)));
        }
        return new Sweep("sweep", points, 0.5, new Settle(1, 10, 0.005), measure);
    }

    @Test
    void aRampMovesTheDutySlowlyUpAndDown() throws Exception {
        RunOutcome outcome = run(new Ramp("thresholds", Duty.ofPercent(5), Duty.ofPercent(25), 2, true));

        assertThat(outcome.ending().completed()).as(outcome.ending().reason()).isTrue();
        Stretch up =
                outcome.trace().stretches("thresholds", Stretch.Kind.RAMP_UP).get(0);
        assertThat(up.seconds()).isCloseTo(10, within(0.1));
        List<Sample> samples = outcome.trace().during(up);
        for (Sample sample : samples.subList(5, samples.size())) {
            double seconds = (sample.boardNanos() - up.fromNanos()) / 1e9;
            assertThat(sample.applied().get(0).percent()).isCloseTo(5 + 2 * seconds, within(0.25));
        }
        Stretch down =
                outcome.trace().stretches("thresholds", Stretch.Kind.RAMP_DOWN).get(0);
        assertThat(down.seconds()).isCloseTo(10, within(0.1));
        assertThat(outcome.trace()
                        .samples()
                        .get(outcome.trace().samples().size() - 1)
                        .applied()
                        .get(0))
                .isEqualTo(Duty.ZERO);
    }

    @Test
    void aHoldIsMarkedEachTime() throws Exception {
        RunOutcome outcome = run(new Hold("starts", Reading.STARTS, Duty.ofPercent(40), 1, 0.2, 4, 0.8, 0));

        List<Stretch> holds = outcome.trace().stretches("starts", Stretch.Kind.HOLD);
        assertThat(holds).hasSize(4).allMatch(hold -> Math.abs(hold.seconds() - 1) < 0.05);
        assertThat(outcome.trace().during(holds.get(3)).get(40).applied().get(0))
                .isEqualTo(Duty.ofPercent(40));
        assertThat(holds.get(1).fromNanos() - holds.get(0).toNanos()).isBetween(780_000_000L, 860_000_000L);
    }

    @Test
    void theStandIsSafeWhileAPersonIsAskedAndOnlyTheAnswerArmsItAgain() throws Exception {
        operator = new ScriptedOperator("what?", "DONE ");

        RunOutcome outcome =
                run(MOMENT, OUTLET, new Hold("after", Reading.NOTHING, Duty.ofPercent(60), 1, 0.2, 1, 0, 0));

        assertThat(outcome.ending().completed()).as(outcome.ending().reason()).isTrue();
        assertThat(outcome.trace().answers())
                .extracting(Answer::step, Answer::question, Answer::word)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("outlet", "Close the outlet.", "done"));
        assertThat(heard)
                .anyMatch(
                        e -> e instanceof RunEvent.NotAnAnswer no && no.given().equals("what?"));
        Stretch waited = outcome.trace().stretches("outlet", Stretch.Kind.WAIT).get(0);
        assertThat(waited.seconds()).isGreaterThan(0.2);
        assertThat(outcome.trace().samples()).allMatch(Sample::armed);
        assertThat(outcome.samplesLost()).isZero();
    }

    @Test
    void anAnswerThatSpeaksOfTheUnitEndsTheRunAgainstTheUnit() throws Exception {
        operator = new ScriptedOperator("leaks");

        RunOutcome outcome = run(OUTLET, MOMENT);

        assertThat(outcome.ending()).isEqualTo(new Ending(Ending.Kind.UNIT_OUT_OF_BOUNDS, "the unit leaks"));
        assertThat(outcome.trace().stretches("moment", Stretch.Kind.HOLD)).isEmpty();
        assertThat(outcome.trace().answers()).extracting(Answer::word).containsExactly("leaks");
    }

    @Test
    void aQuestionToNobodyEndsTheRun() throws Exception {
        SimulatedBoard board = new SimulatedBoard(TestStands.healthyPump(), description.channels());
        Plan plan = new Plan(
                "steps",
                1,
                "Steps",
                UnitKind.PUMP_12V,
                false,
                Plan.Wiring.PUMP,
                List.of(OUTLET),
                List.of(),
                new StopRules(28, 0.2, 9, 900_000, 300));
        try (WireStand stand = new WireStand(description, () -> new SimulatedLine(board, 0), WireTiming.STANDARD)) {
            stand.open();

            RunOutcome outcome =
                    new PlanRun(stand, plan, heard::add, new StopButton(), Operator.NOBODY, Journal.NONE).carryOut();

            assertThat(outcome.ending().kind()).isEqualTo(Ending.Kind.STOPPED_BY_PERSON);
            assertThat(outcome.ending().reason()).startsWith("nobody is there to answer 'outlet'");
        }
    }

    @Test
    void aPauseFallsBetweenTwoPointsAndIsMarked() throws Exception {
        operator = new ScriptedOperator("go");

        RunOutcome outcome = run(sweep(new Measure(1, 20, 1, 5), 40, 60));

        assertThat(outcome.ending().completed()).as(outcome.ending().reason()).isTrue();
        Stretch pause = outcome.trace().stretches("pause", Stretch.Kind.WAIT).get(0);
        List<PointMark> points = outcome.trace().points();
        assertThat(pause.fromNanos()).isGreaterThanOrEqualTo(points.get(0).endNanos());
        assertThat(pause.toNanos()).isLessThanOrEqualTo(points.get(1).setNanos());
    }

    @Test
    void aPointEndsAsSoonAsItsFlowIsKnownWellEnough() throws Exception {
        operator = new ScriptedOperator("go", "go");
        RunOutcome coarse = run(sweep(new Measure(0.5, 20, 0.01, 20), 60));
        RunOutcome fine = run(sweep(new Measure(0.5, 20, 0.00002, 20), 60));

        PointMark quick = coarse.trace().points().get(0);
        PointMark slow = fine.trace().points().get(0);
        assertThat(quick.measuredSeconds()).isLessThan(slow.measuredSeconds());
        assertThat(FlowKnowledge.share(fine.trace().measured(slow), 0)).isLessThanOrEqualTo(0.00002);
        assertThat(slow.measuredSeconds()).isLessThan(20);
    }

    @Test
    void nobodyAtTheStandEndsALongHold() throws Exception {
        RunOutcome outcome = run(1000, new Hold("soak", Reading.SOAK, Duty.ofPercent(50), 400, 0.5, 1, 0, 120));

        assertThat(outcome.ending())
                .isEqualTo(new Ending(
                        Ending.Kind.STOPPED_BY_PERSON, "nobody said within a minute that somebody is at the stand"));
        assertThat(operator.asked()).containsExactly("soak");
        double seconds = outcome.trace()
                .samples()
                .get(outcome.trace().samples().size() - 1)
                .boardSeconds();
        assertThat(seconds).isBetween(180.0, 190.0);
    }

    @Test
    void somebodyAtTheStandKeepsALongHoldGoing() throws Exception {
        operator = new ScriptedOperator("yes", "yes", "yes");

        RunOutcome outcome = run(1000, new Hold("soak", Reading.SOAK, Duty.ofPercent(50), 400, 0.5, 1, 0, 120));

        assertThat(outcome.ending().completed()).as(outcome.ending().reason()).isTrue();
        assertThat(operator.asked()).containsExactly("soak", "soak", "soak");
    }
}
