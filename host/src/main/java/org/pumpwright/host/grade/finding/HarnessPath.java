package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Stretch;

/** Whether current flowed under every load, and whether it went on while the harness was bent. Thread-safe. */
final class HarnessPath {
    private static final String WIGGLE = "wiggle";

    /** Under a load of several amps less than this is none. */
    private static final double LEAST_AMPS = 0.5;

    private static final double STARTED_SECONDS = 1;
    private static final double GONE_SHARE = 0.5;

    private HarnessPath() {}

    static List<Finding> of(FindingInput input) {
        List<Finding> findings = new ArrayList<>();
        path(input).ifPresent(findings::add);
        input.windows(WIGGLE, Stretch.Kind.HOLD).stream()
                .findFirst()
                .ifPresent(hold -> findings.add(interruptions(hold.after(STARTED_SECONDS))));
        return findings;
    }

    private static Optional<Finding> path(FindingInput input) {
        List<Hold> loads = input.plan().steps().stream()
                .filter(Hold.class::isInstance)
                .map(Hold.class::cast)
                .filter(hold -> hold.reads() == Reading.LOAD)
                .filter(hold -> !input.times(hold).isEmpty())
                .toList();
        if (loads.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(loads.stream()
                .filter(hold -> input.settled(hold.name())
                                .orElseThrow()
                                .required(ChannelRole.SUPPLY_AMPS)
                                .value()
                        < LEAST_AMPS)
                .findFirst()
                .map(hold -> Finding.word(
                        HarnessFindings.STEP,
                        "path",
                        "open",
                        format("no current in step %s: fuse blown, or a wire or pin apart", hold.name())))
                .orElseGet(() -> Finding.word(
                        HarnessFindings.STEP, "path", "closed", format("current under all %d loads", loads.size()))));
    }

    private static Finding interruptions(Window bent) {
        double[] amps = bent.values(ChannelRole.SUPPLY_AMPS);
        double mean = Statistics.mean(amps);
        int gone = 0;
        for (double each : amps) {
            gone += each < GONE_SHARE * mean || each < LEAST_AMPS ? 1 : 0;
        }
        return Finding.word(
                HarnessFindings.STEP,
                "interruptions",
                gone == 0 ? "none" : "seen",
                format(
                        "%d of %d samples without current while it was bent; shorter ones than a sample are not seen",
                        gone, amps.length));
    }
}
