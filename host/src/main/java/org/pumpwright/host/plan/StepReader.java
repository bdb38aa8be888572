package org.pumpwright.host.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.Leg;

/** Reads the steps of one plan, one after the other, and numbers the points through. Confined to the reading thread. */
final class StepReader {
    private static final List<String> KINDS = List.of("sweep", "ramp", "hold", "ask");

    private static final double LONGEST_DEAD_HEAD_SECONDS = 5;

    private static final double METRES_PER_FOOT = 0.3048;

    private int points;

    /** The step; empty when it was refused. */
    Optional<Step> step(Node item) {
        Node only = only(item);
        if (item.find("sweep").isPresent()) {
            return Optional.of(sweep(only));
        }
        if (item.find("ramp").isPresent()) {
            return ramp(only);
        }
        return Optional.of(item.find("hold").isPresent() ? hold(only) : ask(only));
    }

    /** What stands under the step's one key. */
    static Node only(Node item) {
        return KINDS.stream()
                .flatMap(kind -> item.find(kind).stream())
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the schema lets a step be of no known kind"));
    }

    static List<Duty> ascending(Node list) {
        List<Duty> duties = new ArrayList<>();
        String before = "";
        for (Node item : list.items()) {
            Duty duty = Duty.ofPercent(item.number());
            if (!duties.isEmpty()
                    && duty.parts() <= duties.get(duties.size() - 1).parts()) {
                item.refuse("is " + item.found() + ", it must lie above the one before it, " + before + " (%)");
            }
            duties.add(duty);
            before = item.found();
        }
        return duties;
    }

    private Sweep sweep(Node node) {
        return new Sweep(
                node.text("name"),
                points(ascending(node.at("duty_percent")), node.flag("down"), node.flag("repeat_first")),
                node.number("ramp_seconds"),
                settle(node.at("settle")),
                measure(node.at("measure")));
    }

    /** The way down leaves out the last point, which was just visited, and the first one where that is repeated. */
    private List<PlanPoint> points(List<Duty> duties, boolean down, boolean repeatFirst) {
        List<PlanPoint> visited = new ArrayList<>();
        duties.forEach(duty -> visited.add(point(Leg.UP, duty)));
        if (down) {
            for (int i = duties.size() - 2; i >= (repeatFirst ? 1 : 0); i--) {
                visited.add(point(Leg.DOWN, duties.get(i)));
            }
        }
        if (repeatFirst) {
            visited.add(point(Leg.REPEAT, duties.get(0)));
        }
        return visited;
    }

    private PlanPoint point(Leg leg, Duty duty) {
        points++;
        return new PlanPoint(points, leg, duty);
    }

    private static Settle settle(Node node) {
        refuseBelow(node.at("give_up_seconds"), node.at("least_seconds"), "settle.least_seconds");
        return new Settle(
                node.number("least_seconds"), node.number("give_up_seconds"), node.number("flow_change_percent") / 100);
    }

    private static Measure measure(Node node) {
        refuseBelow(node.at("most_seconds"), node.at("least_seconds"), "measure.least_seconds");
        return new Measure(
                node.number("least_seconds"),
                node.whole("least_pulses"),
                node.find("flow_uncertainty_percent").map(Node::number).orElse(100.0) / 100,
                node.number("most_seconds"));
    }

    private static Optional<Step> ramp(Node node) {
        Node to = node.at("to_percent");
        Duty low = Duty.ofPercent(node.number("from_percent"));
        Duty high = Duty.ofPercent(to.number());
        if (high.parts() <= low.parts()) {
            to.refuse("is " + to.found() + ", it must lie above from_percent, "
                    + node.at("from_percent").found() + " (%)");
            return Optional.empty();
        }
        return Optional.of(
                new Ramp(node.text("name"), low, high, node.number("percent_per_second"), node.flag("back")));
    }

    private static Hold hold(Node node) {
        refuseLongDeadHead(node);
        return new Hold(
                node.text("name"),
                Reading.ofWord(node.text("reads")),
                Duty.ofPercent(node.number("duty_percent")),
                node.number("seconds"),
                node.number("ramp_seconds"),
                node.find("times").isPresent() ? node.whole("times") : 1,
                node.find("rest_seconds").map(Node::number).orElse(0.0),
                node.find("sign_of_life_seconds").map(Node::number).orElse(0.0),
                node.find("ends_above_amps").map(Node::number).orElse(Double.POSITIVE_INFINITY));
    }

    private static Ask ask(Node node) {
        List<Ask.Answer> answers = new ArrayList<>();
        for (Node answer : node.at("answers").items()) {
            Optional<Ask.End> end = answer.find("ends")
                    .map(blame -> new Ask.End(
                            Ask.Blame.valueOf(blame.text().toUpperCase(java.util.Locale.ROOT)), because(answer)));
            answers.add(new Ask.Answer(answer.text("word"), end));
        }
        Map<String, Double> simulated = new LinkedHashMap<>();
        node.find("simulated")
                .ifPresent(settings ->
                        settings.items().forEach(item -> simulated.put(item.text("setting"), item.number("value"))));
        return new Ask(
                node.text("name"),
                node.text("question"),
                answers,
                simulated,
                node.find("along").map(StepReader::wire));
    }

    private static CopperWire wire(Node node) {
        return new CopperWire(node.whole("awg"), node.number("feet") * METRES_PER_FOOT);
    }

    private static String because(Node answer) {
        Optional<Node> because = answer.find("because");
        if (because.isEmpty()) {
            answer.at("word").refuse("ends the run, so it needs because: the reason for the record");
        }
        return because.map(Node::text).orElse("");
    }

    /** Nothing cools a pump that moves no water. Common practice, no source. */
    private static void refuseLongDeadHead(Node node) {
        Node seconds = node.at("seconds");
        if (node.text("reads").equals(Reading.DEAD_HEAD.word()) && seconds.number() > LONGEST_DEAD_HEAD_SECONDS) {
            seconds.refuse("is " + seconds.found() + ", but a closed outlet may be held for 5 (s) at most");
        }
    }

    private static void refuseBelow(Node value, Node least, String leastKey) {
        if (value.number() < least.number()) {
            value.refuse("is " + value.found() + ", it must be at least " + leastKey + ", " + least.found() + " (s)");
        }
    }
}
