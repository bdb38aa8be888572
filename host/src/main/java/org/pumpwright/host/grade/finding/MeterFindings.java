package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.PointMark;

/**
 * K-factor of a returned meter against the stand's master in the same water: pulses of the one for each volume of the other,
 * {@code K = f / Q}. Both frequencies come from time stamps, so no gate cuts a pulse. Thread-safe.
 */
final class MeterFindings {
    /** The master's number on the board. */
    static final int MASTER = 0;

    /** The returned meter's number on the board. */
    static final int RETURNED = 1;

    private MeterFindings() {}

    static List<Finding> of(FindingInput input, Sweep sweep) {
        List<PointMark> points = input.points(sweep);
        List<Finding> findings = new ArrayList<>();
        input.trace().channels().meters().stream()
                .filter(meter -> meter.index() == MASTER)
                .findFirst()
                .ifPresent(master -> points.forEach(point -> findings.add(k(input, sweep, point, master))));
        List<PointMark> counted = points.stream()
                .filter(point -> hasReturned(input.measured(point)))
                .filter(point -> input.measured(point).pulses(RETURNED) > 0)
                .toList();
        if (!counted.isEmpty()) {
            findings.addAll(PulseFindings.of(input, sweep, counted, RETURNED));
        }
        boolean both = points.stream().anyMatch(point -> hasReturned(input.measured(point)));
        input.trace().channels().meters().stream()
                .filter(meter -> both && meter.index() == MASTER)
                .findFirst()
                .ifPresent(master -> {
                    findings.addAll(MeterKFindings.of(input, sweep, master));
                    findings.addAll(PulseShares.of(input, sweep));
                });
        return findings;
    }

    private static boolean hasReturned(Window window) {
        return window.samples().get(0).meters().size() > RETURNED;
    }

    private static Finding k(FindingInput input, Sweep sweep, PointMark point, MeterChannel master) {
        Window window = input.measured(point);
        String name = format(
                "K at %s, %s",
                point.commanded().print(),
                switch (point.leg()) {
                    case UP -> "up";
                    case DOWN -> "down";
                    case REPEAT -> "repeated";
                });
        Window.Flow flow = window.flow(master);
        String at = "master: " + new FlowRate(flow.value().value()).print(input.units());
        if (!hasReturned(window) || window.pulses(MASTER) == 0 || window.pulses(RETURNED) == 0) {
            return Finding.word(sweep.name(), name, "no pulses", at);
        }
        Uncertain hertz = window.hertz(RETURNED);
        double k = hertz.value() / flow.value().value();
        Uncertain value = new Uncertain(k, k * hertz.relative(), hertz.degreesOfFreedom())
                .with(k * flow.value().relative(), flow.value().degreesOfFreedom());
        return Finding.figure(
                sweep.name(),
                name,
                value,
                FindingUnit.PULSES_PER_M3,
                at + (flow.belowRange() ? ", below the range in which its K holds" : ""));
    }
}
