package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.plan.Step;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.PulseTrain;
import org.pumpwright.host.trace.ChannelRole;

/** Volts and amps under each load, and the resistance of a place from several loads. Thread-safe. */
final class LoadFindings {
    /** A question whose simulated settings begin so moves the voltmeter; so does one that tells none. */
    private static final String PROBE = "probe";

    private LoadFindings() {}

    static List<Finding> of(FindingInput input, Hold hold) {
        List<Finding> findings = new ArrayList<>();
        List<Window> times = input.times(hold);
        for (int i = 0; i < times.size(); i++) {
            Window settled = times.get(i).secondHalf();
            String at = "at " + hold.duty().print();
            findings.add(Finding.figure(
                    hold.name(),
                    Figures.time("volts", i + 1, times.size()),
                    settled.required(ChannelRole.VOLTS_AT_PINS),
                    FindingUnit.VOLTS,
                    at));
            findings.add(Finding.figure(
                    hold.name(),
                    Figures.time("amps", i + 1, times.size()),
                    settled.required(ChannelRole.SUPPLY_AMPS),
                    FindingUnit.AMPS,
                    at));
            if (input.plan().kind() == UnitKind.DRIVER) {
                findings.addAll(frequency(hold, settled, Figures.time("output frequency", i + 1, times.size())));
            }
        }
        return findings;
    }

    private static List<Finding> frequency(Hold hold, Window settled, String name) {
        int meter = settled.channels().flowMeter().index();
        PulseTrain train = settled.train(meter);
        Uncertain hertz = settled.hertz(meter);
        return train.pulses() == 0
                ? List.of()
                : List.of(Finding.figure(
                        hold.name(),
                        name,
                        hertz,
                        FindingUnit.HERTZ,
                        format("%d edges; the board's clock is not in the uncertainty", train.pulses())));
    }

    /** The resistance of each place that was read under two loads or more; a driver's output has none. */
    static List<Finding> resistances(FindingInput input) {
        if (input.plan().kind() == UnitKind.DRIVER) {
            return List.of();
        }
        Map<String, List<Window>> places = new LinkedHashMap<>();
        String place = "";
        for (Step step : input.plan().steps()) {
            if (step instanceof Ask ask && movesProbe(ask)) {
                place = ask.name();
            } else if (step instanceof Hold hold && hold.reads() == Reading.LOAD) {
                String key = place.isEmpty() ? hold.name() : place;
                place = key;
                input.times(hold)
                        .forEach(time -> places.computeIfAbsent(key, k -> new ArrayList<>())
                                .add(time.secondHalf()));
            }
        }
        List<Finding> findings = new ArrayList<>();
        places.forEach((name, loads) -> LoadLine.of(name, loads).ifPresent(findings::add));
        return findings;
    }

    private static boolean movesProbe(Ask ask) {
        return ask.simulated().isEmpty()
                || ask.simulated().keySet().stream().anyMatch(setting -> setting.startsWith(PROBE));
    }
}
