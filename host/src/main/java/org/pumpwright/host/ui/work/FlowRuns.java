package org.pumpwright.host.ui.work;

import java.util.List;
import org.pumpwright.host.quantity.Duty;

/**
 * The runs of a bucket test at one flow, those that are there and those still to come. Thread-safe.
 *
 * @param duty of the flow
 * @param k pulses/m3 of each run that was weighed, in their order
 * @param planned how many there are to be
 * @param gateShare how far so many may lie apart, as a share of their mean
 */
public record FlowRuns(Duty duty, List<Double> k, int planned, double gateShare) {
    public FlowRuns {
        k = List.copyOf(k);
    }

    FlowRuns with(double another) {
        List<Double> more = new java.util.ArrayList<>(k);
        more.add(another);
        return new FlowRuns(duty, more, planned, gateShare);
    }

    /** Mean, pulses/m3; not a number where there is no run yet. */
    public double mean() {
        return k.stream().mapToDouble(each -> each).average().orElse(Double.NaN);
    }

    /** Largest less smallest, as a share of the mean; 0 for fewer than two runs. */
    public double rangeShare() {
        if (k.size() < 2) {
            return 0;
        }
        double most = k.stream().mapToDouble(each -> each).max().orElseThrow();
        double least = k.stream().mapToDouble(each -> each).min().orElseThrow();
        return (most - least) / mean();
    }

    /** How they stand against the gate. */
    public Mark mark() {
        if (k.size() < 2) {
            return Mark.UNKNOWN;
        }
        if (rangeShare() > gateShare) {
            return Mark.BAD;
        }
        return k.size() < planned ? Mark.UNKNOWN : Mark.GOOD;
    }
}
