package org.pumpwright.host.signal;

import java.util.List;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * How far apart the ways up and down lie, warming taken out. Warming is taken as a change in proportion to the value and
 * to time, read from the first point and its repetition at the end:
 *
 * <pre>
 * r = (again / first - 1) / (t_again - t_first)
 * h = (down (1 - r (t_down - t_first)) - up (1 - r (t_up - t_first))) / full
 * </pre>
 *
 * The largest |h| of all points read both ways is reported. Its uncertainty is that of this point (JCGM 100, 5.1.2); the
 * largest of m points that differ by scatter only is expected to lie 1 to 2 of it from 0. Errors common to all points,
 * as of K, cancel and should not be in the points' uncertainties. Thread-safe.
 *
 * @param share way down less way up over full flow, signed
 * @param duty where that was, 0 to 1
 * @param warmUpPerSecond relative change a second taken out; 0 with uncertainty 0 where the first point has no value to
 *     tell it by
 */
public record Hysteresis(Uncertain share, double duty, Uncertain warmUpPerSecond) {
    /** A first point less certain than this tells nothing of warming. */
    private static final double MOST_RELATIVE = 0.1;

    /** One point of the sweep: duty 0 to 1, time of its middle in s, what was read. */
    public record Point(double duty, double seconds, Uncertain value) {
        public Point {
            Require.inRange("duty", duty, 0, 1, "");
            Require.finite("time", seconds);
        }
    }

    /**
     * The hysteresis of one sweep.
     *
     * @param up points of the way up, the first of the sweep first
     * @param down points of the way down
     * @param again the first point repeated at the end
     * @param full flow at full duty, above 0, in the unit of the points
     * @throws IllegalArgumentException when no duty was read both ways, or the repetition is not of the first point
     */
    public static Hysteresis of(List<Point> up, List<Point> down, Point again, double full) {
        Require.inRange("full flow", full, Double.MIN_NORMAL, Double.MAX_VALUE, "");
        if (up.isEmpty() || up.get(0).duty != again.duty || again.seconds <= up.get(0).seconds) {
            throw new IllegalArgumentException("the repeated point at duty %s and %s s does not repeat the first"
                    .formatted(again.duty, again.seconds));
        }
        Point first = up.get(0);
        Uncertain warmUp = warmUp(first, again);
        return up.stream()
                .flatMap(u -> down.stream().filter(d -> d.duty == u.duty).map(d -> at(u, d, first, warmUp, full)))
                .max((a, b) -> Double.compare(Math.abs(a.share.value()), Math.abs(b.share.value())))
                .orElseThrow(() -> new IllegalArgumentException("no duty was read on the way up and on the way down"));
    }

    private static Uncertain warmUp(Point first, Point again) {
        double before = first.value.value();
        if (before == 0 || first.value.relative() > MOST_RELATIVE) {
            return Uncertain.of(0, 0);
        }
        double seconds = again.seconds - first.seconds;
        double ratio = again.value.value() / before;
        double u = again.value.standardUncertainty() / Math.abs(before);
        return new Uncertain((ratio - 1) / seconds, u / seconds, again.value.degreesOfFreedom())
                .with(ratio * first.value.relative() / seconds, first.value.degreesOfFreedom());
    }

    private static Hysteresis at(Point up, Point down, Point first, Uncertain warmUp, double full) {
        double r = warmUp.value();
        double upFactor = 1 - r * (up.seconds - first.seconds);
        double downFactor = 1 - r * (down.seconds - first.seconds);
        double byWarmUp =
                down.value.value() * (down.seconds - first.seconds) - up.value.value() * (up.seconds - first.seconds);
        Uncertain difference = new Uncertain(
                        down.value.value() * downFactor - up.value.value() * upFactor,
                        down.value.standardUncertainty() * Math.abs(downFactor),
                        down.value.degreesOfFreedom())
                .with(up.value.standardUncertainty() * Math.abs(upFactor), up.value.degreesOfFreedom())
                .with(Math.abs(byWarmUp) * warmUp.standardUncertainty(), warmUp.degreesOfFreedom());
        return new Hysteresis(difference.times(1 / full), up.duty, warmUp);
    }
}
