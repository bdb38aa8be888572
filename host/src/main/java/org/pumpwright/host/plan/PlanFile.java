package org.pumpwright.host.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.trace.Leg;

/** Reads test plans from files. Thread-safe. */
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
        StepReader reader = new StepReader();
        List<Step> steps = new ArrayList<>();
        file.at("steps").items().forEach(item -> reader.step(item).ifPresent(steps::add));
        Node wiring = file.at("wiring");
        Plan plan = new Plan(
                file.text("plan"),
                file.whole("version"),
                file.text("title"),
                UnitKind.ofWord(file.text("kind")),
                file.find("needs_relief_check").isPresent() && file.flag("needs_relief_check"),
                new Plan.Wiring(wiring.whole("drive"), wiring.whole("meter")),
                steps,
                judged(file.at("judge_percent"), steps),
                stop(file.at("stop")));
        refuseSameNames(file.at("steps"));
        refuseDeadHeadUnproved(plan, file.at("steps"));
        refuseTooShort(plan, file.at("stop").at("run_seconds_above"));
        return plan;
    }

    private static List<Duty> judged(Node list, List<Step> steps) {
        List<Duty> judged = StepReader.ascending(list);
        for (int i = 0; i < judged.size(); i++) {
            Duty duty = judged.get(i);
            if (steps.stream().noneMatch(step -> step instanceof Sweep sweep && visitsUpward(sweep, duty))) {
                Node item = list.items().get(i);
                item.refuse("is " + item.found() + ", it must be one of a sweep's duty_percent");
            }
        }
        return judged;
    }

    private static boolean visitsUpward(Sweep sweep, Duty duty) {
        return sweep.points().stream()
                .anyMatch(point -> point.leg() == Leg.UP && point.duty().equals(duty));
    }

    private static StopRules stop(Node node) {
        return new StopRules(
                node.number("supply_amps_above"),
                node.number("for_seconds"),
                node.number("volts_at_pins_below"),
                Pressure.ofPsi(node.number("pressure_psi_above")).pascals(),
                node.number("run_seconds_above"));
    }

    private static void refuseSameNames(Node steps) {
        Map<String, Integer> lines = new HashMap<>();
        for (Node item : steps.items()) {
            Node name = StepReader.only(item).at("name");
            Integer before = lines.putIfAbsent(name.text(), name.line());
            if (before != null) {
                name.refuse("is " + name.found() + ", which is taken in line " + before + " already");
            }
        }
    }

    /** A closed outlet without a relief valve proved on that stand ends when something breaks. */
    private static void refuseDeadHeadUnproved(Plan plan, Node steps) {
        for (int i = 0; i < plan.steps().size() && !plan.needsReliefCheck(); i++) {
            if (plan.steps().get(i) instanceof Hold hold && hold.reads() == Reading.DEAD_HEAD) {
                Node reads = steps.items().stream()
                        .map(StepReader::only)
                        .filter(step -> step.text("name").equals(hold.name()))
                        .findFirst()
                        .orElse(steps)
                        .at("reads");
                reads.refuse("is " + reads.found() + ", so the plan must say needs_relief_check: true");
            }
        }
    }

    private static void refuseTooShort(Plan plan, Node runSeconds) {
        if (runSeconds.number() < plan.leastSeconds()) {
            runSeconds.refuse("is " + runSeconds.found() + ", but the plan's steps need at least "
                    + Math.round(plan.leastSeconds() * 10) / 10.0 + " (s)");
        }
    }
}
