package org.pumpwright.host.calibrate;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.quantity.Budget;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;

/**
 * What the runs of the main pass at one set flow gave together. Thread-safe.
 *
 * @param set the flow aimed at
 * @param flow the mean flow of the runs that count
 * @param runs that count, two or more
 * @param leftOut runs left out, each with its reason
 * @param deviationShare standard deviation of K as a share of its mean
 * @param rangeShare largest less smallest K as a share of the mean
 * @param gate whether the runs agree well enough
 * @param outlier a run that may not belong, where there is one
 * @param budget of the mean K
 * @param stated the mean K with its uncertainty
 */
public record FlowPoint(
        FlowRate set,
        FlowRate flow,
        List<RunResult> runs,
        List<RunResult> leftOut,
        double deviationShare,
        double rangeShare,
        Gate gate,
        Optional<Outlier> outlier,
        FlowBudget budget,
        Stated stated) {
    public FlowPoint {
        runs = List.copyOf(runs);
        leftOut = List.copyOf(leftOut);
    }

    static FlowPoint of(BucketTest test, FlowRate set, List<RunResult> counting, List<RunResult> leftOut) {
        Means k = Means.of(counting, run -> run.k().pulsesPerM3());
        FlowBudget budget = BudgetAssembly.of(test, counting);
        double flow = Means.of(counting, run -> run.flow().m3PerSecond()).mean();
        double range = (k.most() - k.least()) / k.mean();
        return new FlowPoint(
                set,
                new FlowRate(flow),
                counting,
                leftOut,
                k.deviation() / k.mean(),
                range,
                Gate.of(test.rules().grade(), counting.size(), range),
                Outlier.among(counting),
                budget,
                Stated.of(Propagation.combined(k.mean(), budget), test.rules().level()));
    }

    public KFactor k() {
        return stated.k();
    }

    /** The mean K with every input of it, pulses/m3; inputs that flows share have the same name at each. */
    Budget inPulsesPerM3() {
        return Propagation.ofOne(k().pulsesPerM3(), budget, name());
    }

    /** By which inputs of its own are told from those of another flow. */
    String name() {
        return String.format(Locale.ROOT, "%.9g m3/s", set.m3PerSecond());
    }

    /** Mean length of its runs. */
    public double meanSeconds() {
        return Means.of(runs, run -> run.run().seconds()).mean();
    }
}
