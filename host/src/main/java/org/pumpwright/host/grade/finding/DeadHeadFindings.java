package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.trace.ChannelRole;

/** Pressure and amps against a closed outlet. Thread-safe. */
final class DeadHeadFindings {
    private DeadHeadFindings() {}

    static List<Finding> of(FindingInput input, Hold hold) {
        List<Finding> findings = new ArrayList<>();
        List<Window> times = input.times(hold);
        for (int i = 0; i < times.size(); i++) {
            Window settled = times.get(i).secondHalf();
            String pressure = Figures.time("pressure, outlet closed", i + 1, times.size());
            String amps = Figures.time("supply amps, outlet closed", i + 1, times.size());
            settled.channels()
                    .analog(ChannelRole.OUTLET_PRESSURE)
                    .ifPresent(channel -> findings.add(Finding.figure(
                            hold.name(),
                            pressure,
                            settled.required(ChannelRole.OUTLET_PRESSURE),
                            FindingUnit.PASCALS,
                            pressureNote(input, settled))));
            findings.add(Finding.figure(
                    hold.name(),
                    amps,
                    settled.required(ChannelRole.SUPPLY_AMPS),
                    FindingUnit.AMPS,
                    "at " + hold.duty().print()));
        }
        return findings;
    }

    private static String pressureNote(FindingInput input, Window settled) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double pascals : settled.values(ChannelRole.OUTLET_PRESSURE)) {
            least = Math.min(least, pascals);
            most = Math.max(most, pascals);
        }
        long pulses = settled.pulses(settled.channels().flowMeter().index());
        return format(
                        "readings from %s to %s",
                        new Pressure(least).print(input.units()), new Pressure(most).print(input.units()))
                + (pulses > 0 ? format("; the meter gave %d pulses: the outlet was not closed", pulses) : "");
    }
}
