package org.pumpwright.host.calibrate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.quantity.FlowRate;

/** What is wrong with the flow of one run: below or above what the meters are for, or not the flow that was set. */
final class FlowRefusals {
    /** A flow that was set by hand is this near to what was aimed at, as a share; a mistaken unit is far beyond. */
    private static final double NEAR_SET = 0.15;

    /** A flow may lie this share outside a range by the way it was set. */
    private static final double SLACK = 0.05;

    private FlowRefusals() {}

    static List<Problem> of(BucketTest test, RunResult result) {
        List<Problem> problems = new ArrayList<>();
        Run run = result.run();
        double flow = result.flow().m3PerSecond();
        double set = run.set().m3PerSecond();
        if (Math.abs(flow / set - 1) > NEAR_SET) {
            String units = UnitMix.between(flow, set)
                    .map(mix -> ": their ratio is that of " + mix.words() + ", units are mixed")
                    .orElse(": a time, weight or set flow is wrong");
            problems.add(problem(
                    run,
                    "%s by volume and time, but was set to %s%s",
                    words(test, result.flow()),
                    words(test, run.set()),
                    units));
            return problems;
        }
        outside("the meter is", test.declared().meter(), test, result).ifPresent(problems::add);
        if (test.bench().method() instanceof Comparing master) {
            outside("the master meter is", master.range(), test, result).ifPresent(problems::add);
        }
        return problems;
    }

    private static Optional<Problem> outside(String what, FlowRange range, BucketTest test, RunResult result) {
        if (range.holds(result.flow(), SLACK)) {
            return Optional.empty();
        }
        boolean below = result.flow().m3PerSecond() < range.least().m3PerSecond();
        return Optional.of(problem(
                result.run(),
                "%s, %s the range: %s for %s to %s. Test within it",
                words(test, result.flow()),
                below ? "below" : "above",
                what,
                words(test, range.least()),
                words(test, range.most())));
    }

    private static Problem problem(Run run, String format, Object... values) {
        return new Problem(
                "run " + run.number() + " flow",
                "run " + run.number() + " has " + String.format(Locale.ROOT, format, values));
    }

    private static String words(BucketTest test, FlowRate flow) {
        return flow.print(test.units());
    }
}
