package org.pumpwright.host.grade.finding;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.catalog.Nominal;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

/**
 * Everything that findings depend on. Thread-safe.
 *
 * @param trace what was measured
 * @param plan what was to be measured
 * @param pwmHz frequency of the drive
 * @param freewheelVolts drop of the drive's freewheel diode, where it is known
 * @param units units of the words; figures are SI all the same
 * @param nominal what the unit's model says that it should do
 */
public record FindingInput(
        Trace trace, Plan plan, double pwmHz, OptionalDouble freewheelVolts, UnitSystem units, Nominal nominal) {
    private static final int LEAST_SAMPLES = 3;

    /** A run of a unit whose model says nothing of what it should do. */
    public FindingInput(Trace trace, Plan plan, double pwmHz, OptionalDouble freewheelVolts, UnitSystem units) {
        this(trace, plan, pwmHz, freewheelVolts, units, Nominal.UNKNOWN);
    }

    /** The points of a sweep that were finished and have enough samples to be read. */
    List<PointMark> points(Sweep sweep) {
        return trace.points().stream()
                .filter(mark -> sweep.points().stream().anyMatch(point -> point.number() == mark.number()))
                .filter(mark -> trace.measured(mark).size() >= LEAST_SAMPLES)
                .toList();
    }

    /** What was measured at a point. */
    Window measured(PointMark point) {
        return window(point.measureFromNanos(), point.endNanos());
    }

    /** What a hold of this name read the last time it was carried out, once it had settled; empty where it was not. */
    Optional<Window> settled(String hold) {
        List<Window> times = windows(hold, Stretch.Kind.HOLD);
        return times.isEmpty()
                ? Optional.empty()
                : Optional.of(times.get(times.size() - 1).secondHalf());
    }

    /** The sweep of this name, where the plan has one. */
    Optional<Sweep> sweep(String name) {
        return plan.steps().stream()
                .filter(Sweep.class::isInstance)
                .map(Sweep.class::cast)
                .filter(sweep -> sweep.name().equals(name))
                .findFirst();
    }

    /** Each time of a hold that was finished. */
    List<Window> times(Hold hold) {
        return windows(hold.name(), Stretch.Kind.HOLD);
    }

    List<Window> windows(String step, Stretch.Kind kind) {
        return trace.stretches(step, kind).stream()
                .map(stretch -> window(stretch.fromNanos(), stretch.toNanos()))
                .filter(window -> window.size() >= LEAST_SAMPLES)
                .toList();
    }

    /** The samples between two board times, both ends included. */
    Window window(long fromNanos, long toNanos) {
        return new Window(
                trace.between(fromNanos, toNanos),
                trace.channels(),
                plan.wiring().drive());
    }
}
