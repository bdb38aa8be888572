package org.pumpwright.host.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.trace.Leg;

/**
 * Reads test plans from files. A file lists the duties of the upward sweep; the way down and the repeated first point
 * follow from two switches. Thread-safe.
 */
public final class PlanFile {
    private static final DataSchema SCHEMA = DataSchema.beside(PlanFile.class, "plan.schema.json");

    private PlanFile() {}

    /**
     * Reads one plan.
     *
     * @throws DataFileException when the file is absent or does not hold a usable plan
     */
    public static Plan read(Path file) throws DataFileException {
        return DataFile.read(file, SCHEMA, PlanFile::plan);
    }

    private static Plan plan(Node file) {
        Node sweep = file.at("sweep");
        List<Duty> duties = ascending(file.at("duty_percent"));
        Plan plan = new Plan(
                file.text("plan"),
                file.whole("version"),
                file.text("title"),
                UnitKind.ofWord(file.text("kind")),
                points(duties, sweep.flag("down"), sweep.flag("repeat_first")),
                judged(file.at("judge_percent"), duties),
                file.number("ramp_seconds"),
                settle(file.at("settle")),
                measure(file.at("measure")),
                stop(file.at("stop")));
        refuseTooShort(plan, file.at("stop").at("run_seconds_above"));
        return plan;
    }

    private static List<Duty> ascending(Node list) {
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

    private static List<Duty> judged(Node list, List<Duty> duties) {
        List<Duty> judged = ascending(list);
        for (int i = 0; i < judged.size(); i++) {
            if (!duties.contains(judged.get(i))) {
                Node item = list.items().get(i);
                item.refuse("is " + item.found() + ", it must be one of duty_percent");
            }
        }
        return judged;
    }

    /** The way down leaves out the last point, which was just visited, and the first one where that is repeated. */
    private static List<PlanPoint> points(List<Duty> duties, boolean down, boolean repeatFirst) {
        List<PlanPoint> points = new ArrayList<>();
        duties.forEach(duty -> add(points, Leg.UP, duty));
        if (down) {
            for (int i = duties.size() - 2; i >= (repeatFirst ? 1 : 0); i--) {
                add(points, Leg.DOWN, duties.get(i));
            }
        }
        if (repeatFirst) {
            add(points, Leg.REPEAT, duties.get(0));
        }
        return points;
    }

    private static void add(List<PlanPoint> points, Leg leg, Duty duty) {
        points.add(new PlanPoint(points.size() + 1, leg, duty));
    }

    private static Plan.Settle settle(Node node) {
        refuseBelow(node.at("give_up_seconds"), node.at("least_seconds"), "settle.least_seconds");
        return new Plan.Settle(
                node.number("least_seconds"), node.number("give_up_seconds"), node.number("flow_change_percent") / 100);
    }

    private static Plan.Measure measure(Node node) {
        refuseBelow(node.at("most_seconds"), node.at("least_seconds"), "measure.least_seconds");
        return new Plan.Measure(node.number("least_seconds"), node.whole("least_pulses"), node.number("most_seconds"));
    }

    private static Plan.StopRules stop(Node node) {
        return new Plan.StopRules(
                node.number("supply_amps_above"),
                node.number("for_seconds"),
                node.number("volts_at_pins_below"),
                Pressure.ofPsi(node.number("pressure_psi_above")).pascals(),
                node.number("run_seconds_above"));
    }

    private static void refuseBelow(Node value, Node least, String leastKey) {
        if (value.number() < least.number()) {
            value.refuse("is " + value.found() + ", it must be at least " + leastKey + ", " + least.found() + " (s)");
        }
    }

    private static void refuseTooShort(Plan plan, Node runSeconds) {
        double perPoint = plan.settle().leastSeconds() + plan.measure().leastSeconds();
        double needed = plan.points().size() * perPoint;
        if (runSeconds.number() < needed) {
            runSeconds.refuse("is " + runSeconds.found() + ", but the plan's "
                    + plan.points().size() + " points need at least " + needed + " (s)");
        }
    }
}
