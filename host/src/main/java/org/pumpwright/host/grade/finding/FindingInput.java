package org.pumpwright.host.grade.finding;

import java.util.List;
import java.util.OptionalDouble;
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
 */
public record FindingInput(Trace trace, Plan plan, double pwmHz, OptionalDouble freewheelVolts, UnitSystem units) {
    private static final int LEAST_SAMPLES = 3;

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
