package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.EarlierRuns;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.RunWatcher;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.StandAtRestChecks;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.run.RunEvent;
import org.pumpwright.host.run.RunEvent.LiveValues;
import org.pumpwright.host.run.StopButton;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Tells a run as JSON, one object a line, SI units in the names; the last line is the result, but for what a practice unit was. */
final class EventLines implements RunWatcher {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final PrintWriter out;
    private final StopButton stop;
    private @Nullable StandExpectations expected;

    EventLines(PrintWriter out, StopButton stop) {
        this.out = out;
        this.stop = stop;
    }

    @Override
    public void begins(Plan plan, Optional<HealthyCurve> curve, StandExpectations stand) {
        expected = stand;
        ObjectNode node = event("begins").put("plan", plan.label()).put("least_seconds", plan.leastSeconds());
        curve.ifPresent(c -> node.put("curve", c.label()));
        print(node);
    }

    @Override
    public void counts(EarlierRuns earlier) {
        ObjectNode node = event("counts").put("run_of_unit", earlier.attempt()).put("at_most", earlier.most());
        ArrayNode ids = node.putArray("earlier");
        earlier.ids().forEach(ids::add);
        earlier.decision()
                .ifPresent(decision -> node.put("decided_by", decision.by()).put("reason", decision.reason()));
        print(node);
    }

    @Override
    public void heard(RunEvent event) {
        print(node(event));
        if (out.checkError()) {
            stop.press("the reader of the events is gone");
        }
    }

    /** What came of runs that were cut short before. */
    void recovered(RecordFolder.Recovered recovered) {
        for (RecordFolder.Kept kept : recovered.kept()) {
            ObjectNode node = event("recovered")
                    .put("verdict", word(Verdict.INVALID))
                    .put("record", kept.record().toString())
                    .put("page", kept.page().toString());
            kept.trouble().ifPresent(trouble -> node.put("trouble", trouble));
            print(node);
        }
        recovered.troubles().forEach(trouble -> print(event("not_recovered").put("trouble", trouble)));
    }

    /** What the simulated unit was. */
    void unit(PracticeUnit unit) {
        print(event("unit")
                .put("fault", unit.fault().word())
                .put("severity", word(unit.severity()))
                .put("words", unit.words()));
    }

    /** What came of it. */
    void result(Acceptance.Result result) {
        ObjectNode node = event("result")
                .put("verdict", word(result.record().grade().verdict()))
                .put("record", result.kept().record().toString())
                .put("page", result.kept().page().toString());
        ArrayNode reasons = node.putArray("reasons");
        result.record().grade().reasons().forEach(reasons::add);
        result.kept().trouble().ifPresent(trouble -> node.put("trouble", trouble));
        print(node);
    }

    private ObjectNode node(RunEvent event) {
        if (event instanceof RunEvent.Began began) {
            return event("began").put("points", began.points()).put("least_seconds", began.expectedSeconds());
        }
        if (event instanceof RunEvent.StepBegan begun) {
            return event("step").put("step", begun.step().name());
        }
        if (event instanceof RunEvent.Live live) {
            ObjectNode node = event("live")
                    .put("phase", word(live.phase()))
                    .put("step", live.where().step())
                    .put("part", live.where().part())
                    .put("leg", word(live.where().leg()))
                    .put("duty", live.where().duty().fraction())
                    .put("seconds_left", live.secondsLeft());
            return values(node, live.now());
        }
        if (event instanceof RunEvent.PointDone done) {
            ObjectNode node = event("point")
                    .put("point", done.point().number())
                    .put("leg", word(done.point().leg()))
                    .put("duty", done.point().duty().fraction())
                    .put("settled", done.settled())
                    .put("enough_pulses", done.enoughPulses());
            return values(node, done.mean());
        }
        return other(event);
    }

    private ObjectNode other(RunEvent event) {
        StandExpectations stand = expected;
        if (event instanceof RunEvent.Rested rested) {
            ObjectNode node = event("stand_at_rest");
            ArrayNode checks = node.putArray("checks");
            if (stand != null) {
                StandAtRestChecks.of(rested.atRest(), stand)
                        .forEach(check -> checks.addObject()
                                .put("check", check.name())
                                .put("ok", check.ok())
                                .put("finding", check.finding()));
            }
            return node;
        }
        if (event instanceof RunEvent.Asked asked) {
            return asked("asked", asked.question());
        }
        if (event instanceof RunEvent.NotAnAnswer not) {
            return asked("not_an_answer", not.question()).put("given", not.given());
        }
        if (event instanceof RunEvent.Answered answered) {
            return event("answered").put("step", answered.question().name()).put("word", answered.word());
        }
        RunEvent.Ended ended = (RunEvent.Ended) event;
        return event("ended")
                .put("ending", word(ended.ending().kind()))
                .put("reason", ended.ending().reason())
                .put("stand", ended.safe().words());
    }

    private static ObjectNode asked(String name, Ask question) {
        ObjectNode node = event(name).put("step", question.name()).put("question", question.question());
        ArrayNode answers = node.putArray("answers");
        question.answers().forEach(answer -> answers.add(answer.word()));
        return node;
    }

    private static ObjectNode values(ObjectNode node, LiveValues values) {
        node.put("flow_m3_per_second", values.flow().m3PerSecond());
        if (Double.isFinite(values.flowUncertainty())) {
            node.put("flow_relative_uncertainty", values.flowUncertainty());
        }
        return node.put("supply_amps", values.supplyAmps()).put("volts_at_pins", values.voltsAtPins());
    }

    private static ObjectNode event(String name) {
        return JSON.createObjectNode().put("event", name);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private void print(ObjectNode node) {
        out.println(JSON.writeValueAsString(node));
    }
}
