package org.pumpwright.host.calibration;

import java.util.List;
import java.util.Locale;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;

/**
 * A pulse meter's K-factor over its flow: one K for every flow, or a table with straight lines between its points and the
 * first and last K beyond them. The flow of a frequency is the solution of {@code f = Q K(Q)}, which is a quadratic between two
 * points and has one solution because the frequency must rise with the flow. Thread-safe.
 *
 * @param points at least one, the lower flow first
 */
public record KCurve(List<KPoint> points) {
    public KCurve {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a meter needs a K-factor: none is given");
        }
        for (int i = 1; i < points.size(); i++) {
            requireRising(new Segment(points.get(i - 1), points.get(i)));
        }
    }

    private static void requireRising(Segment segment) {
        double from = segment.low().flow().gallonsPerMinute();
        double to = segment.high().flow().gallonsPerMinute();
        if (!(from < to)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the K table goes from %.4g to %.4g gal/min, each flow must be above the one before",
                    from,
                    to));
        }
        if (!(segment.hertzPerFlow(segment.low().flow().m3PerSecond()) > 0
                && segment.hertzPerFlow(segment.high().flow().m3PerSecond()) > 0)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "K falls so fast from %.4g to %.4g gal/min that more flow would give fewer pulses",
                    from,
                    to));
        }
    }

    /** One K for every flow. */
    public static KCurve constant(KFactor k) {
        return new KCurve(List.of(new KPoint(new FlowRate(0), k)));
    }

    /** The K-factor at a flow. */
    public KFactor at(FlowRate flow) {
        if (isBeyond(flow.m3PerSecond())) {
            return end(flow.m3PerSecond()).k();
        }
        return new KFactor(segmentOfFlow(flow.m3PerSecond()).k(flow.m3PerSecond()));
    }

    /** The flow at which the meter gives this many pulses per second. */
    public FlowRate flowAt(double hertz) {
        if (hertz <= first().hertz()) {
            return first().k().flowAt(hertz);
        }
        if (hertz >= last().hertz()) {
            return last().k().flowAt(hertz);
        }
        int high = 1;
        while (points.get(high).hertz() < hertz) {
            high++;
        }
        return new FlowRate(new Segment(points.get(high - 1), points.get(high)).flow(hertz));
    }

    /** Change of the flow with the frequency at a flow, m3 a pulse: the sensitivity coefficient of JCGM 100, 5.1.3. */
    public double flowPerHertz(FlowRate flow) {
        double q = flow.m3PerSecond();
        return 1 / (isBeyond(q) ? end(q).k().pulsesPerM3() : segmentOfFlow(q).hertzPerFlow(q));
    }

    private boolean isBeyond(double m3PerSecond) {
        return m3PerSecond <= first().flow().m3PerSecond()
                || m3PerSecond >= last().flow().m3PerSecond();
    }

    private KPoint end(double m3PerSecond) {
        return m3PerSecond <= first().flow().m3PerSecond() ? first() : last();
    }

    private Segment segmentOfFlow(double m3PerSecond) {
        int high = 1;
        while (points.get(high).flow().m3PerSecond() < m3PerSecond) {
            high++;
        }
        return new Segment(points.get(high - 1), points.get(high));
    }

    private KPoint first() {
        return points.get(0);
    }

    private KPoint last() {
        return points.get(points.size() - 1);
    }

    /** The line between two points: {@code K = atNoFlow + slope Q}. */
    private record Segment(KPoint low, KPoint high) {
        double slope() {
            return (high.k().pulsesPerM3() - low.k().pulsesPerM3())
                    / (high.flow().m3PerSecond() - low.flow().m3PerSecond());
        }

        double atNoFlow() {
            return low.k().pulsesPerM3() - slope() * low.flow().m3PerSecond();
        }

        double k(double flow) {
            return low.k().pulsesPerM3() + slope() * (flow - low.flow().m3PerSecond());
        }

        double hertzPerFlow(double flow) {
            return atNoFlow() + 2 * slope() * flow;
        }

        /** The root of {@code slope Q^2 + atNoFlow Q - f}, written so that nothing cancels. */
        double flow(double hertz) {
            double b = atNoFlow();
            double root = Math.sqrt(b * b + 4 * slope() * hertz);
            return b >= 0 ? 2 * hertz / (b + root) : (root - b) / (2 * slope());
        }
    }
}
