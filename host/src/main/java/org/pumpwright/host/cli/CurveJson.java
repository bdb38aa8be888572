package org.pumpwright.host.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.LimitSet;
import org.pumpwright.host.curve.SpreadParts;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A healthy curve as one line of JSON for other programs: SI units in the names, shares of 1. Thread-safe. */
final class CurveJson {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private CurveJson() {}

    /**
     * The line.
     *
     * @param event what was done: {@code built}, {@code approved} or {@code curve}
     * @param notes what a person should know
     * @param file where it was written; empty when it was only read
     */
    static String of(String event, HealthyCurve curve, List<String> notes, Optional<String> file) {
        ObjectNode node = JSON.createObjectNode()
                .put("event", event)
                .put("curve", curve.id())
                .put("version", curve.version())
                .put("label", curve.label())
                .put("title", curve.title())
                .put("simulated", curve.simulated())
                .put("provisional", curve.provisional())
                .put("units", curve.units())
                .put("tolerance_factor", curve.toleranceFactor())
                .put("coverage", curve.coverage())
                .put("freewheel_volts", curve.freewheelVolts())
                .put("author", curve.author())
                .put("made", curve.made());
        node.putObject("conditions")
                .put("model", curve.conditions().model())
                .put("driver", curve.conditions().driver())
                .put("pwm_hz", curve.conditions().pwmHz())
                .put("nozzle", curve.conditions().nozzle())
                .put("fluid", curve.conditions().fluid());
        basis(node, curve);
        curve.approval()
                .ifPresent(approval -> node.putObject("approval")
                        .put("by", approval.by())
                        .put("on", approval.on().toString()));
        ArrayNode points = node.putArray("points");
        curve.points().forEach(point -> point(points.addObject(), point, curve));
        ArrayNode sets = node.putArray("limit_sets");
        curve.limitSets().forEach(set -> limitSet(sets.addObject(), set));
        ArrayNode told = node.putArray("notes");
        notes.forEach(told::add);
        file.ifPresent(path -> node.put("file", path));
        return JSON.writeValueAsString(node);
    }

    private static void basis(ObjectNode node, HealthyCurve curve) {
        curve.basis().ifPresent(basis -> {
            ObjectNode from = node.putObject("basis")
                    .put("plan", basis.plan())
                    .put("runs", basis.runs())
                    .put("first_run", basis.firstRun().toString())
                    .put("last_run", basis.lastRun().toString())
                    .put("known_good_by", basis.knownGoodBy());
            ArrayNode ids = from.putArray("run_ids");
            basis.runIds().forEach(ids::add);
        });
    }

    private static void point(ObjectNode node, CurvePoint point, HealthyCurve curve) {
        double volts = point.effectiveVolts();
        node.put("effective_volts", volts)
                .put("flow_m3_per_second", point.flowM3PerSecond())
                .put("flow_spread", point.flowSpread())
                .put("flow_low_m3_per_second", curve.flow(volts).low())
                .put("flow_high_m3_per_second", curve.flow(volts).high())
                .put("motor_amps", point.motorAmps())
                .put("motor_amps_spread", point.motorAmpsSpread())
                .put("motor_amps_low", curve.motorAmps(volts).low())
                .put("motor_amps_high", curve.motorAmps(volts).high());
        point.flowParts().ifPresent(parts -> parts(node.putObject("flow_parts"), parts));
        point.motorAmpsParts().ifPresent(parts -> parts(node.putObject("motor_amps_parts"), parts));
    }

    private static void parts(ObjectNode node, SpreadParts parts) {
        node.put("unit_spread", parts.unitSpread())
                .put("run_spread", parts.runSpread())
                .put("mean_uncertainty", parts.meanUncertainty())
                .put("degrees_of_freedom", parts.degreesOfFreedom())
                .put("own_tolerance_factor", parts.toleranceFactor());
    }

    private static void limitSet(ObjectNode node, LimitSet set) {
        node.put("name", set.name())
                .put("source", set.source())
                .put("set_by", set.setBy())
                .put("guard_factor", set.guardFactor());
        ArrayNode limits = node.putArray("limits");
        for (LimitSet.Limit limit : set.limits()) {
            ObjectNode one = limits.addObject()
                    .put("quantity", limit.quantity().word())
                    .put("effective_volts", limit.effectiveVolts());
            String unit = limit.quantity() == LimitSet.Quantity.FLOW ? "m3_per_second" : "amps";
            end(one, "low_" + unit, limit.low());
            end(one, "high_" + unit, limit.high());
        }
    }

    private static void end(ObjectNode node, String name, OptionalDouble value) {
        value.ifPresent(number -> node.put(name, number));
    }
}
