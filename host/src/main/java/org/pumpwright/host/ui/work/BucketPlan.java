package org.pumpwright.host.ui.work;

import java.util.List;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Require;

/**
 * How a bucket test is to go. Thread-safe.
 *
 * @param duties one flow each, in their order
 * @param runs at each
 * @param seconds least length of a run
 */
public record BucketPlan(List<Duty> duties, int runs, int seconds) {
    private static final int LEAST_FLOWS = 3;
    private static final int MOST_FLOWS = 5;
    private static final double SLOWEST_PERCENT = 40;
    private static final double FULL_PERCENT = 100;

    /** Five runs at four flows, a minute each. */
    public static final BucketPlan USUAL = of(4, 5, 60);

    public BucketPlan {
        duties = List.copyOf(duties);
        Require.inRange("flows", duties.size(), LEAST_FLOWS, MOST_FLOWS, "");
        Require.inRange("runs", runs, LEAST_FLOWS, 10, "");
    }

    private static BucketPlan of(int flows, int runs, int seconds) {
        List<Duty> duties = java.util.stream.IntStream.range(0, flows)
                .mapToObj(i -> Duty.ofPercent(
                        Math.rint(SLOWEST_PERCENT + (FULL_PERCENT - SLOWEST_PERCENT) * i / (flows - 1.0))))
                .toList();
        return new BucketPlan(duties, runs, seconds);
    }

    /** The same with one flow more; after the most come the fewest. */
    public BucketPlan otherFlows() {
        int flows = duties.size() == MOST_FLOWS ? LEAST_FLOWS : duties.size() + 1;
        return of(flows, runs, seconds);
    }

    /** The same with 3, 5 or 10 runs at each flow, in turn. */
    public BucketPlan otherRuns() {
        return new BucketPlan(duties, runs == 3 ? 5 : runs == 5 ? 10 : 3, seconds);
    }

    /** The same with runs of 30, 60 or 120 seconds, in turn. */
    public BucketPlan otherSeconds() {
        return new BucketPlan(duties, runs, seconds == 30 ? 60 : seconds == 60 ? 120 : 30);
    }

    /** How many runs there are in all. */
    public int total() {
        return duties.size() * runs;
    }
}
