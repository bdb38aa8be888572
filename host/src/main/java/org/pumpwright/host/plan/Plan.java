package org.pumpwright.host.plan;

import java.util.List;
import java.util.stream.Stream;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.quantity.Duty;

/**
 * One version of a test plan. Thread-safe.
 *
 * @param id short name, as given on the command line
 * @param version counts up with every change to the file
 * @param title for people
 * @param kind the kind of unit it is for
 * @param needsReliefCheck whether it may only run on a stand whose relief valve was checked and is in date
 * @param wiring which drive feeds the unit and which meter it is read by
 * @param steps what is done, in this order
 * @param judged the set points of the up leg whose features make the verdict; the others are for information
 * @param stop what ends the run early
 */
public record Plan(
        String id,
        int version,
        String title,
        UnitKind kind,
        boolean needsReliefCheck,
        Wiring wiring,
        List<Step> steps,
        List<Duty> judged,
        StopRules stop) {
    public Plan {
        steps = List.copyOf(steps);
        judged = List.copyOf(judged);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("plan %s has no steps".formatted(id));
        }
    }

    /** Which drive of the board feeds the unit, and which of the stand's meters carries its flow, by their numbers. */
    public record Wiring(int drive, int meter) {
        /** The pump's drive and the first meter. */
        public static final Wiring PUMP = new Wiring(0, 0);
    }

    /** The same plan with a stop rule that also keeps to what the unit's model may draw, A. */
    public Plan withSupplyAmpsAtMost(double amps) {
        return new Plan(
                id, version, title, kind, needsReliefCheck, wiring, steps, judged, stop.withSupplyAmpsAtMost(amps));
    }

    /** The points of every sweep, in the order in which they are visited. */
    public List<PlanPoint> points() {
        return steps.stream()
                .flatMap(step -> step instanceof Sweep sweep ? sweep.points().stream() : Stream.empty())
                .toList();
    }

    /** The least time that the plan takes when every point settles soon and nobody has to be waited for, s. */
    public double leastSeconds() {
        return steps.stream().mapToDouble(Step::leastSeconds).sum();
    }

    /** The id and version as they are printed on every paper. */
    public String label() {
        return id + " v" + version;
    }
}
