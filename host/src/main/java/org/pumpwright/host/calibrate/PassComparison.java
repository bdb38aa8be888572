package org.pumpwright.host.calibrate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.CoverageFactor;
import org.pumpwright.host.quantity.FlowRate;

/**
 * K of one flow in another pass against the main one: hysteresis, or whether the first flow still gives the same at the end. Thread-safe.
 *
 * @param leg the other pass
 * @param set flow
 * @param differenceShare K of the other pass less that of the main one, as a share of it
 * @param chanceShare two sets of runs without any real difference lie further apart than this once in twenty times
 */
public record PassComparison(Leg leg, FlowRate set, double differenceShare, double chanceShare) {
    private static final double LEVEL = 0.95;

    static Optional<PassComparison> of(FlowPoint main, Leg leg, List<RunResult> all) {
        List<RunResult> others = new ArrayList<>();
        for (RunResult run : all) {
            if (run.run().leg() == leg && run.run().counts() && run.run().set().equals(main.set())) {
                others.add(run);
            }
        }
        if (others.isEmpty()) {
            return Optional.empty();
        }
        double mean = Means.of(others, run -> run.k().pulsesPerM3()).mean();
        int n = main.runs().size();
        double chance =
                CoverageFactor.of(LEVEL, n - 1.0) * main.deviationShare() * Math.sqrt(1.0 / n + 1.0 / others.size());
        return Optional.of(new PassComparison(leg, main.set(), mean / main.k().pulsesPerM3() - 1, chance));
    }

    /** Whether the difference is more than chance. */
    public boolean shows() {
        return Math.abs(differenceShare) > chanceShare;
    }
}
