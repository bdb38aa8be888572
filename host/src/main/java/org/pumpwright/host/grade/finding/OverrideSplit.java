package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.FlowRate;

/**
 * A valve moved by its coil against the same valve moved by hand: where it moves by hand alone the trouble is electric, where
 * by neither it is hydraulic. From the steps {@code zero-command-before}, {@code by-command} and {@code by-override}. The
 * table is common practice, no source. Thread-safe.
 */
final class OverrideSplit {
    static final String BY_OVERRIDE = "by-override";
    private static final String NAME = "electric or hydraulic";

    /** At the command of 60 % a valve in order gives about six tenths of what its override gives (assumed model). */
    private static final double LEAST_SHARE = 0.4;

    private OverrideSplit() {}

    static List<Finding> of(FindingInput input) {
        Optional<Double> before = flow(input, "zero-command-before");
        Optional<Double> commanded = input.sweep("by-command")
                .flatMap(sweep -> input.points(sweep).stream().findFirst().map(point -> flow(input.measured(point))));
        Optional<Double> override = flow(input, BY_OVERRIDE);
        if (before.isEmpty() || commanded.isEmpty() || override.isEmpty()) {
            return List.of();
        }
        double least = input.trace().channels().flowMeter().least().m3PerSecond();
        return List.of(Finding.word(
                ValveFindings.STEP,
                NAME,
                word(before.get(), commanded.get(), override.get(), least),
                format(
                        "by nothing %s, by command %s, by override %s",
                        print(input, before.get()), print(input, commanded.get()), print(input, override.get()))));
    }

    private static String word(double before, double commanded, double override, double least) {
        if (before > least) {
            return "held open";
        }
        if (override <= least) {
            return commanded > least ? "override does nothing" : "hydraulic";
        }
        if (commanded <= least) {
            return "electric";
        }
        return commanded < LEAST_SHARE * override ? "electric weak" : "both work";
    }

    private static Optional<Double> flow(FindingInput input, String hold) {
        return input.settled(hold).map(OverrideSplit::flow);
    }

    private static double flow(Window window) {
        return window.channels()
                .flowMeter()
                .flow(window.hertz(window.channels().flowMeter().index()).value())
                .m3PerSecond();
    }

    private static String print(FindingInput input, double flow) {
        return new FlowRate(flow).print(input.units());
    }
}
