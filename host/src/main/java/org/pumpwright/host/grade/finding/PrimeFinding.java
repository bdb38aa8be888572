package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.quantity.Uncertain;

/** Time from the start of a dry unit to the first steady flow. Thread-safe. */
final class PrimeFinding {
    private static final String NAME = "time to steady flow";

    /** Steady is what stays this near to the flow at the end (common practice, no source). */
    private static final double STEADY_SHARE = 0.10;

    private static final int LEAST_PULSES = 10;

    private PrimeFinding() {}

    static List<Finding> of(FindingInput input, Hold hold) {
        List<Finding> findings = new ArrayList<>();
        List<Window> times = input.times(hold);
        for (int i = 0; i < times.size(); i++) {
            findings.add(of(hold, times.get(i), Figures.time(NAME, i + 1, times.size())));
        }
        return findings;
    }

    private static Finding of(Hold hold, Window time, String name) {
        int meter = time.channels().flowMeter().index();
        Window end = time.after(time.seconds() * 0.8);
        if (end.pulses(meter) < LEAST_PULSES) {
            return Finding.word(hold.name(), name, "no steady flow", format("within %.0f s", time.seconds()));
        }
        Optional<Uncertain> steady = SteadyFrom.of(time, meter, end.hertz(meter).value(), STEADY_SHARE);
        return steady.map(seconds -> Finding.figure(
                        hold.name(),
                        name,
                        seconds,
                        FindingUnit.SECONDS,
                        "from the command until the flow stayed within 10 % of that at the end"))
                .orElseGet(() -> Finding.word(
                        hold.name(),
                        name,
                        "no steady flow",
                        format("within %.0f s, though water came", time.seconds())));
    }
}
