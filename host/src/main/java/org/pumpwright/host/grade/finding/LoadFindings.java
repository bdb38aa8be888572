package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.CopperWire;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;

/** Volts and amps under each load, and the resistance of a place from several loads. Thread-safe. */
final class LoadFindings {
    /** Stranding, tolerance of the gauge, and 10 K warmer or colder (common practice, no source); rectangular. */
    private static final double WIRE_SHARE = 0.06 / Math.sqrt(3);

    private LoadFindings() {}

    static List<Finding> of(FindingInput input, Hold hold) {
        List<Finding> findings = new ArrayList<>();
        List<Window> times = input.times(hold);
        for (int i = 0; i < times.size(); i++) {
            String more = times.size() == 1 ? "" : format(", time %d of %d", i + 1, times.size());
            String at = "at " + hold.duty().print();
            findings.addAll(under(input, new Load(hold.name(), times.get(i).secondHalf(), more, at)));
        }
        return findings;
    }

    /** Volts, amps and frequency at each point of a driver's sweep. */
    static List<Finding> of(FindingInput input, Sweep sweep) {
        List<Finding> findings = new ArrayList<>();
        for (PointMark point : input.points(sweep)) {
            String more = " at " + point.commanded().print() + (point.leg() == Leg.UP ? "" : ", again");
            findings.addAll(under(input, new Load(sweep.name(), input.measured(point), more, "")));
        }
        return findings;
    }

    /** One load: of which step, what was measured, what is added to each name, and the note. */
    private record Load(String step, Window window, String more, String note) {
        Finding figure(String name, Uncertain value, FindingUnit unit) {
            return Finding.figure(step, name + more, value, unit, note);
        }
    }

    private static List<Finding> under(FindingInput input, Load load) {
        List<Finding> findings = new ArrayList<>();
        Window window = load.window();
        findings.add(load.figure("volts", window.required(ChannelRole.VOLTS_AT_PINS), FindingUnit.VOLTS));
        findings.add(load.figure("amps", window.required(ChannelRole.SUPPLY_AMPS), FindingUnit.AMPS));
        int meter = window.channels().flowMeter().index();
        if (window.pulses(meter) > 0) {
            // A driver's output is wired to the meter's input: its edges are the switching.
            findings.add(
                    input.plan().kind() == UnitKind.DRIVER
                            ? load.figure("output frequency", clocked(window.hertz(meter)), FindingUnit.HERTZ)
                            : load.figure("flow", window.flow().value(), FindingUnit.M3_PER_SECOND));
        }
        return findings;
    }

    private static Uncertain clocked(Uncertain hertz) {
        return hertz.with(DriverFindings.CLOCK_SHARE * hertz.value(), Double.POSITIVE_INFINITY);
    }

    /** The resistance of each place of a harness that was read under two loads or more. */
    static List<Finding> resistances(FindingInput input) {
        if (input.plan().kind() != UnitKind.HARNESS) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        for (HarnessPlaces.Place place : HarnessPlaces.of(input)) {
            LoadLine.of(place.name(), place.loads()).ifPresent(ohms -> {
                findings.add(ohms);
                place.wires().forEach(wire -> findings.add(over(ohms, wire)));
            });
        }
        return findings;
    }

    /** What a place has over what its wire should have: bad strands, a wire too thin. */
    private static Finding over(Finding ohms, CopperWire wire) {
        Uncertain measured = ((Finding.Figure) ohms.outcome()).value();
        double should = wire.ohms();
        Uncertain over =
                new Uncertain(measured.value() - should, measured.standardUncertainty(), measured.degreesOfFreedom());
        return Finding.figure(
                ohms.step(),
                "resistance over the wire's",
                over.with(WIRE_SHARE * should, Double.POSITIVE_INFINITY),
                FindingUnit.OHMS,
                format("%.1f m of AWG %d should have %.2f mohm at 20 C", wire.metres(), wire.gauge(), should * 1000));
    }
}
