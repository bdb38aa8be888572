package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.MeterChannel;

/** Steps in which nothing may flow: pulses without flow, and flow at zero command. Thread-safe. */
final class NoFlowFindings {
    /** With no event in a time there are fewer than 3 in it on average, at 95 % (rule of three, textbook). */
    private static final double RULE_OF_THREE = 3;

    /** So long the water may take to come to rest; a quarter of the hold at most. */
    private static final double MOST_TO_REST_SECONDS = 2;

    private NoFlowFindings() {}

    /** Pulses of the unit's meter, or of both where a meter is the unit; any are held against the drive's switching. */
    static List<Finding> zeroFlow(FindingInput input, Hold hold) {
        List<Finding> findings = new ArrayList<>();
        List<Window> times = input.times(hold);
        for (int i = 0; i < times.size(); i++) {
            Window whole = times.get(i);
            Window time = atRest(whole);
            if (input.plan().kind() == UnitKind.METER) {
                String master = Figures.time("master meter: pulses", i + 1, times.size());
                String returned = Figures.time("returned meter: pulses", i + 1, times.size());
                findings.addAll(pulses(input, hold, time, MeterFindings.MASTER, master));
                findings.addAll(pulses(input, hold, time, MeterFindings.RETURNED, returned));
            } else {
                int meter = time.channels().flowMeter().index();
                findings.addAll(pulses(input, hold, time, meter, Figures.time("pulses", i + 1, times.size())));
            }
        }
        return findings;
    }

    /** What is left of a hold once the water has come to rest. */
    static Window atRest(Window whole) {
        return whole.after(Math.min(MOST_TO_REST_SECONDS, whole.seconds() / 4));
    }

    private static List<Finding> pulses(FindingInput input, Hold hold, Window time, int meter, String name) {
        if (time.samples().get(0).meters().size() <= meter) {
            return List.of();
        }
        long pulses = time.pulses(meter);
        if (pulses == 0) {
            return List.of(Finding.word(
                    hold.name(),
                    name,
                    "none",
                    format(
                            "in %.1f s: fewer than %.2g a second at 95 %%",
                            time.seconds(), RULE_OF_THREE / time.seconds())));
        }
        // Counted events that come when they like scatter by the root of their number (Poisson).
        Uncertain hertz = Uncertain.of(pulses / time.seconds(), Math.sqrt((double) pulses) / time.seconds());
        return List.of(
                Finding.figure(
                        hold.name(), name, hertz, FindingUnit.HERTZ, format("%d in %.1f s", pulses, time.seconds())),
                PwmLock.of(
                        hold.name(),
                        name.replace("pulses", "in step with the drive"),
                        time.train(meter),
                        input.pwmHz()));
    }

    /** Flow, where the unit carries any, and amps, once the hold has settled. */
    static List<Finding> zeroCommand(FindingInput input, Hold hold) {
        List<Finding> findings = new ArrayList<>();
        List<Window> times = input.times(hold);
        for (int i = 0; i < times.size(); i++) {
            Window settled = times.get(i).secondHalf();
            String flow = Figures.time("flow at zero command", i + 1, times.size());
            String amps = Figures.time("amps at zero command", i + 1, times.size());
            switch (input.plan().kind()) {
                case PUMP_12V, HYDRAULIC_PUMP, METER -> findings.add(flow(input, hold, settled, flow));
                case DRIVER, HARNESS -> {}
            }
            Uncertain read = settled.required(ChannelRole.SUPPLY_AMPS);
            findings.add(Finding.figure(hold.name(), amps, read, FindingUnit.AMPS, ""));
        }
        return findings;
    }

    /** A meter that stands still tells only that the flow is below what turns it. */
    private static Finding flow(FindingInput input, Hold hold, Window settled, String name) {
        MeterChannel meter = settled.channels().flowMeter();
        String least = new FlowRate(meter.least().m3PerSecond()).print(input.units());
        return Finding.figure(
                hold.name(),
                name,
                settled.flow().value(),
                FindingUnit.M3_PER_SECOND,
                format(
                        "%d pulses in %.1f s; the meter is good from %s",
                        settled.pulses(meter.index()), settled.seconds(), least));
    }
}
