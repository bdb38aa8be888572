package org.pumpwright.host.plan;

import java.util.List;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Require;

/**
 * One version of a test plan. Thread-safe.
 *
 * @param id short name, as given on the command line
 * @param version counts up with every change to the file
 * @param title for people
 * @param kind the kind of unit it is for
 * @param points in the order in which they are visited
 * @param judged the set points of the up leg whose features make the verdict; the others are for information
 * @param rampSeconds time from 0 to fully on when the set point changes
 * @param settle when a point counts as settled
 * @param measure how long a settled point is measured
 * @param stop what ends the run early
 */
public record Plan(
        String id,
        int version,
        String title,
        UnitKind kind,
        List<PlanPoint> points,
        List<Duty> judged,
        double rampSeconds,
        Settle settle,
        Measure measure,
        StopRules stop) {
    public Plan {
        points = List.copyOf(points);
        judged = List.copyOf(judged);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("plan %s has no points".formatted(id));
        }
        Require.inRange("ramp", rampSeconds, 0.01, 60, "s");
    }

    /** The same plan with a stop rule that also keeps to what the unit's model may draw, A. */
    public Plan withSupplyAmpsAtMost(double amps) {
        StopRules tighter = new StopRules(
                Math.min(amps, stop.supplyAmpsAbove),
                stop.forSeconds,
                stop.voltsAtPinsBelow,
                stop.pressureAbovePascals,
                stop.runSecondsAbove);
        return new Plan(id, version, title, kind, points, judged, rampSeconds, settle, measure, tighter);
    }

    /** The id and version as they are printed on every paper. */
    public String label() {
        return id + " v" + version;
    }

    /**
     * When a point counts as settled: not before the least time, then as soon as the flow's trend over the window is
     * small; at the latest when the time runs out, and then the point is marked.
     *
     * @param leastSeconds shortest wait
     * @param giveUpSeconds longest wait
     * @param flowChangeShare largest change of flow over the window, as a share of the flow
     */
    public record Settle(double leastSeconds, double giveUpSeconds, double flowChangeShare) {}

    /**
     * How long a settled point is measured: at least the least time and the least pulses, at most the most time.
     *
     * @param leastSeconds shortest measurement
     * @param leastPulses fewest pulses
     * @param mostSeconds longest measurement
     */
    public record Measure(double leastSeconds, int leastPulses, double mostSeconds) {}

    /**
     * What ends the run early.
     *
     * @param supplyAmpsAbove supply current, A
     * @param forSeconds for how long current, volts or pressure must be beyond their limit
     * @param voltsAtPinsBelow volts at the unit's pins, V
     * @param pressureAbovePascals outlet pressure, Pa
     * @param runSecondsAbove length of the whole run, s
     */
    public record StopRules(
            double supplyAmpsAbove,
            double forSeconds,
            double voltsAtPinsBelow,
            double pressureAbovePascals,
            double runSecondsAbove) {}
}
