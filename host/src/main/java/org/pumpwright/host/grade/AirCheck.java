package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;

import java.util.Comparator;
import java.util.List;
import org.pumpwright.host.signal.PulseHealth;

/**
 * Air on its way through the meter. Slugs make neighbouring pulse intervals alike and far more uneven than edge jitter
 * does, at most points of the sweep. A unit whose current falters, as with a loose brush, has a flow that falters with it;
 * such a point speaks of the unit and is left out. Thread-safe.
 */
final class AirCheck {
    /** Share of the points with flow that must be uneven. */
    private static final double LEAST_SHARE = 0.6;

    private static final int LEAST_POINTS = 2;

    /** The noise of a 10-bit converter is about 0.10 of the current at the lowest set points; faltering is more. */
    private static final double MOST_AMPS_VARIATION = 0.15;

    private AirCheck() {}

    static StandCheck of(List<PointReading> points) {
        List<PointReading> flowing = points.stream()
                .filter(p -> p.pulseHealth().intervals() >= PulseHealth.LEAST_INTERVALS)
                .filter(p -> p.ampsVariation() <= MOST_AMPS_VARIATION)
                .toList();
        List<PointReading> uneven =
                flowing.stream().filter(p -> p.pulseHealth().unsteady()).toList();
        boolean suspected = uneven.size() >= LEAST_POINTS && uneven.size() >= LEAST_SHARE * flowing.size();
        String finding = uneven.stream()
                .max(Comparator.comparingDouble(p -> p.pulseHealth().variation()))
                .filter(p -> suspected)
                .map(p -> finding(p, uneven.size(), flowing.size()))
                .orElse("pulses even enough");
        return StandChecks.check(
                "air",
                !suspected,
                finding,
                "watch the sight tube, flood the suction joints with water, prime again, then run again");
    }

    private static String finding(PointReading worst, int uneven, int of) {
        PulseHealth health = worst.pulseHealth();
        return format(
                "AIR SUSPECTED: pulse intervals wander by %.1f %% (at most %.1f) and alike (lag-one %+.2f) at %s, %d of %d points",
                health.variation() * 100,
                PulseHealth.MOST_VARIATION * 100,
                health.lagOne(),
                worst.mark().commanded().print(),
                uneven,
                of);
    }
}
