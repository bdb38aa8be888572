package org.pumpwright.host.calibrate.simulated;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.pumpwright.host.calibrate.BucketEvaluation;
import org.pumpwright.host.calibrate.BucketRefused;
import org.pumpwright.host.calibrate.BucketResult;
import org.pumpwright.host.calibrate.FittedK;
import org.pumpwright.host.calibrate.FlowPoint;
import org.pumpwright.host.calibrate.Stated;
import org.pumpwright.host.quantity.KFactor;

/** How often the stated intervals of made-up tests hold the true K. Confined to one thread. */
public final class Coverage {
    private final Map<String, Count> counts = new LinkedHashMap<>();
    private int tables;

    private Coverage() {}

    /**
     * Counts of one interval.
     *
     * @param held it held the true K
     * @param all tests
     * @param expandedShare mean half of the interval, as a share of K
     */
    public record Count(int held, int all, double expandedShare) {
        static final Count NONE = new Count(0, 0, 0);

        Count with(boolean holds, double expanded) {
            return new Count(held + (holds ? 1 : 0), all + 1, (expandedShare * all + expanded) / (all + 1));
        }

        public double share() {
            return (double) held / all;
        }
    }

    /** Draws and works out so many tests; the same seed gives the same counts. */
    public static Coverage of(MadeUpTest kind, int tests, long seed) throws BucketRefused {
        Coverage coverage = new Coverage();
        for (int i = 0; i < tests; i++) {
            coverage.add(kind, BucketEvaluation.of(kind.draw(seed + i * 1_000_003L)));
        }
        return coverage;
    }

    private void add(MadeUpTest kind, BucketResult result) {
        for (FlowPoint point : result.points()) {
            KFactor truth = kind.meter().at(point.flow());
            String flow = String.format(Locale.ROOT, "%.2f gal/min", point.set().gallonsPerMinute());
            count("measured K at " + flow, point.stated(), truth);
            count("K(Q) at " + flow, result.curve().at(point.flow()), truth);
        }
        count(
                "single K at the working flow",
                result.single().asCalibrated(),
                kind.meter().at(Benches.WORKING));
        tables += result.curve() instanceof FittedK ? 0 : 1;
    }

    private void count(String what, Stated stated, KFactor truth) {
        counts.put(what, counts.getOrDefault(what, Count.NONE).with(stated.holds(truth), stated.expandedShare()));
    }

    /** By what the interval is of, in the order of a result. */
    public Map<String, Count> counts() {
        return new LinkedHashMap<>(counts);
    }

    /** How many tests ended with a table because the law was found not to hold. */
    public int tables() {
        return tables;
    }
}
