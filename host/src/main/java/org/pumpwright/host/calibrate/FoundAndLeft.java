package org.pumpwright.host.calibrate;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.quantity.FlowRate;

/**
 * A meter before and after adjustment or repair; both results are kept whole. Thread-safe.
 *
 * @param found as it came
 * @param left as it goes
 */
public record FoundAndLeft(BucketResult found, BucketResult left) {
    /** The single K as left over that as found, less 1. */
    public double changeShare() {
        return left.single().k().pulsesPerM3() / found.single().k().pulsesPerM3() - 1;
    }

    /** Change at a flow that was tested both times, as a share of what was found. */
    public record At(FlowRate set, double share) {}

    /** The changes at the flows that were set both times, the lowest first. */
    public List<At> changes() {
        List<At> changes = new ArrayList<>();
        for (FlowPoint before : found.points()) {
            for (FlowPoint after : left.points()) {
                if (before.set().equals(after.set())) {
                    changes.add(new At(
                            before.set(), after.k().pulsesPerM3() / before.k().pulsesPerM3() - 1));
                }
            }
        }
        return changes;
    }
}
