package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Stretch;

/**
 * Whether a driver carries 15 A, and goes on carrying it when hot: from the holds {@code supply-pins-15a} and
 * {@code hot-15a}. Thread-safe.
 */
final class HotLoadFindings {
    private static final String STEP = DriverFindings.STEP;
    private static final double REFERENCE_VOLTS = 13.5;

    /** Ramp and soft start are over by then. */
    private static final double STARTED_SECONDS = 2;

    private static final double STRETCH_SECONDS = 10;
    private static final double GONE_SHARE = 0.5;

    private HotLoadFindings() {}

    static List<Finding> of(FindingInput input) {
        List<Finding> findings = new ArrayList<>();
        Optional<Window> cold = input.settled("supply-pins-15a");
        List<Window> hot = input.windows("hot-15a", Stretch.Kind.HOLD);
        Stream.concat(cold.stream(), hot.stream().map(HotLoadFindings::end))
                .filter(window -> window.size() > 0)
                .map(HotLoadFindings::atReference)
                .min(Comparator.comparingDouble(Uncertain::value))
                .ifPresent(least -> findings.add(Finding.figure(
                        STEP,
                        "least amps into the 15 A load",
                        least,
                        FindingUnit.AMPS,
                        format(
                                "scaled to %.1f V at the supply pins; cold, and at the end of the hot hold",
                                REFERENCE_VOLTS))));
        hot.stream().findFirst().ifPresent(window -> {
            lost(window).ifPresent(findings::add);
            findings.add(interruptions(window));
        });
        return findings;
    }

    /** A resistor's amps go with the volts. */
    private static Uncertain atReference(Window window) {
        return Common.over(window.required(ChannelRole.SUPPLY_AMPS), window.required(ChannelRole.VOLTS_AT_PINS))
                .times(REFERENCE_VOLTS);
    }

    private static Window end(Window hot) {
        return hot.after(hot.seconds() - STRETCH_SECONDS);
    }

    private static Optional<Finding> lost(Window hot) {
        Window begin = hot.between(STARTED_SECONDS, STARTED_SECONDS + STRETCH_SECONDS);
        if (hot.seconds() < 2 * (STARTED_SECONDS + STRETCH_SECONDS)
                || begin.required(ChannelRole.SUPPLY_AMPS).value() < SwitchFindings.LEAST_AMPS) {
            return Optional.empty();
        }
        Uncertain lost = Common.less(Common.ratio(end(hot), begin, ChannelRole.SUPPLY_AMPS), 1)
                .times(-1);
        return Optional.of(Finding.figure(
                STEP,
                "amps lost over the hot hold",
                lost,
                FindingUnit.SHARE,
                format("of the first %.0f s, after %.0f s", STRETCH_SECONDS, hot.seconds())));
    }

    private static Finding interruptions(Window hot) {
        double[] amps = hot.after(STARTED_SECONDS).values(ChannelRole.SUPPLY_AMPS);
        double mean = Statistics.mean(amps);
        int gone = 0;
        for (double each : amps) {
            gone += each < GONE_SHARE * mean ? 1 : 0;
        }
        if (mean < SwitchFindings.LEAST_AMPS) {
            return Finding.word(STEP, "interruptions", "no current", format("%.2f A on average", mean));
        }
        return Finding.word(
                STEP,
                "interruptions",
                gone == 0 ? "none" : "seen",
                format("%d of %d samples below half of %.1f A", gone, amps.length, mean));
    }
}
