package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.PointMark;

/**
 * A valve and its pump by the coil's amps: flow at full command and at 1 A, the amps at which flow sets in, hysteresis, and
 * whether the flow stands still at the top. From the sweep of a plan for hydraulic pumps, the ammeter in the coil's lead.
 * Thread-safe.
 */
final class ValveFindings {
    static final String STEP = "valve";

    private static final double MIDDLE_AMPS = 1;

    /** Flow has set in at this share of the full one. */
    private static final double START_SHARE = 0.05;

    private static final double STILL_SHARE = 0.01;
    private static final double AMPS_GROW = 0.05;

    private final FindingInput input;
    private final Sweep sweep;
    private final MeterChannel meter;
    private final AnalogChannel amps;
    private final ValveCurve up;
    private final ValveCurve down;

    private ValveFindings(FindingInput input, Sweep sweep) {
        this.input = input;
        this.sweep = sweep;
        meter = input.trace().channels().flowMeter();
        amps = input.trace().channels().required(ChannelRole.SUPPLY_AMPS);
        up = curve(Leg.UP);
        List<ValveCurve.Point> back = new ArrayList<>(curve(Leg.DOWN).points());
        // The highest point is where the ways meet: it belongs to both.
        up.points().stream().reduce((a, b) -> b).ifPresent(back::add);
        down = new ValveCurve(back);
    }

    static List<Finding> of(FindingInput input) {
        if (input.plan().kind() != UnitKind.HYDRAULIC_PUMP) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        input.sweep("sweep")
                .filter(sweep -> input.points(sweep).size() > 2)
                .ifPresent(sweep -> findings.addAll(new ValveFindings(input, sweep).findings()));
        findings.addAll(CoilFindings.of(input));
        findings.addAll(OverrideSplit.of(input));
        return findings;
    }

    private ValveCurve curve(Leg leg) {
        return new ValveCurve(input.points(sweep).stream()
                .filter(mark -> mark.leg() == leg)
                .map(this::point)
                .toList());
    }

    private ValveCurve.Point point(PointMark mark) {
        Window window = input.measured(mark);
        Uncertain hertz = window.hertz(meter.index());
        double perHertz = meter.k().flowPerHertz(meter.flow(hertz.value()));
        return new ValveCurve.Point(
                window.bare(ChannelRole.SUPPLY_AMPS),
                new Uncertain(
                        meter.flow(hertz.value()).m3PerSecond(),
                        hertz.standardUncertainty() * perHertz,
                        hertz.degreesOfFreedom()));
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        Optional<ValveCurve.Point> top = up.points().stream()
                .max(Comparator.comparingDouble(point -> point.amps().value()));
        double full = up.points().stream()
                .mapToDouble(point -> point.flow().value())
                .max()
                .orElse(0);
        top.ifPresent(point -> findings.add(figure(
                "flow at full command",
                withK(point.flow()),
                FindingUnit.M3_PER_SECOND,
                format("at %.2f A", point.amps().value()))));
        if (full < meter.least().m3PerSecond()) {
            return findings;
        }
        middle().ifPresent(findings::add);
        up.ampsAt(START_SHARE * full)
                .ifPresent(start -> findings.add(figure(
                        "start amps",
                        withAmps(start),
                        FindingUnit.AMPS,
                        "at which 5 % of the full flow flows, on the way up")));
        hysteresis(full).ifPresent(findings::add);
        flatTop(full).ifPresent(findings::add);
        return findings;
    }

    private static Finding figure(String name, Uncertain value, FindingUnit unit, String note) {
        return Finding.figure(STEP, name, value, unit, note);
    }

    private Uncertain withK(Uncertain flow) {
        return flow.with(meter.relativeUncertainty() * flow.value(), Double.POSITIVE_INFINITY);
    }

    private Uncertain withAmps(Uncertain current) {
        return current.with(amps.calibrationUncertainty(current.value()), Double.POSITIVE_INFINITY);
    }

    /** In the middle of the two ways friction falls out. The ammeter's error moves along the curve. */
    private Optional<Finding> middle() {
        Optional<Uncertain> rising = up.flowAt(MIDDLE_AMPS);
        Optional<Uncertain> falling = down.flowAt(MIDDLE_AMPS);
        double step = 0.1;
        Optional<Uncertain> before = up.flowAt(MIDDLE_AMPS - step);
        Optional<Uncertain> after = up.flowAt(MIDDLE_AMPS + step);
        if (rising.isEmpty() || falling.isEmpty() || before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        double slope = (after.get().value() - before.get().value()) / (2 * step);
        Uncertain mean = new Uncertain(
                        (rising.get().value() + falling.get().value()) / 2,
                        rising.get().standardUncertainty() / 2,
                        rising.get().degreesOfFreedom())
                .with(falling.get().standardUncertainty() / 2, falling.get().degreesOfFreedom());
        return Optional.of(figure(
                "flow at 1 A",
                withK(mean).with(slope * amps.calibrationUncertainty(MIDDLE_AMPS), Double.POSITIVE_INFINITY),
                FindingUnit.M3_PER_SECOND,
                "in the middle of the way up and the way down, at 1.00 A of coil current"));
    }

    /** At the same amps; K falls out of the share, and the ammeter's error moves both ways alike. */
    private Optional<Finding> hysteresis(double full) {
        return up.points().stream()
                .flatMap(point -> down.flowAt(point.amps().value()).stream()
                        .map(falling -> new Uncertain(
                                        falling.value() - point.flow().value(),
                                        falling.standardUncertainty(),
                                        falling.degreesOfFreedom())
                                .with(
                                        point.flow().standardUncertainty(),
                                        point.flow().degreesOfFreedom())))
                .max(Comparator.comparingDouble(gap -> Math.abs(gap.value())))
                .map(gap -> figure(
                        "hysteresis by amps",
                        gap.times(1 / full),
                        FindingUnit.SHARE,
                        "of the full flow, widest gap of the two ways at the same coil amps"));
    }

    /** Whether the flow stands still over the last three points up while the amps grow: something else than the valve limits it. */
    private Optional<Finding> flatTop(double full) {
        List<ValveCurve.Point> points = up.points();
        if (points.size() < 3) {
            return Optional.empty();
        }
        ValveCurve.Point low = points.get(points.size() - 3);
        ValveCurve.Point high = points.get(points.size() - 1);
        boolean amperesGrow = high.amps().value() > low.amps().value() * (1 + AMPS_GROW);
        boolean still = Math.abs(high.flow().value() - low.flow().value()) < STILL_SHARE * full;
        return Optional.of(Finding.word(
                STEP,
                "flat top",
                amperesGrow && still ? "yes" : "no",
                format(
                        "%.1f %% more flow from %.2f to %.2f A",
                        100 * (high.flow().value() / low.flow().value() - 1),
                        low.amps().value(),
                        high.amps().value())));
    }
}
