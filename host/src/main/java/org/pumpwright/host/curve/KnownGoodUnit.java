package org.pumpwright.host.curve;

import java.util.List;

/**
 * What one known-good unit did. Thread-safe.
 *
 * @param points in order of effective volts, at least three
 */
public record KnownGoodUnit(List<Point> points) {
    /**
     * One point of a unit.
     *
     * @param effectiveVolts V
     * @param flowM3PerSecond flow
     * @param motorAmps motor current, A
     */
    public record Point(double effectiveVolts, double flowM3PerSecond, double motorAmps) {}

    public KnownGoodUnit {
        points = List.copyOf(points);
        if (points.size() < 3) {
            throw new IllegalArgumentException(
                    "a known-good unit has %d points, at least 3 are needed".formatted(points.size()));
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).effectiveVolts() > points.get(i - 1).effectiveVolts())) {
                throw new IllegalArgumentException(
                        "known-good unit: point %d does not lie above the one before it".formatted(i + 1));
            }
        }
    }

    double lowest() {
        return points.get(0).effectiveVolts();
    }

    double highest() {
        return points.get(points.size() - 1).effectiveVolts();
    }

    /**
     * The unit at a value of effective volts: the parabola through the three nearest points, since the curves bend and a
     * chord would lie beside them.
     */
    Point at(double effectiveVolts) {
        int first = 0;
        while (first < points.size() - 3
                && effectiveVolts - points.get(first).effectiveVolts()
                        > points.get(first + 3).effectiveVolts() - effectiveVolts) {
            first++;
        }
        Point a = points.get(first);
        Point b = points.get(first + 1);
        Point c = points.get(first + 2);
        double wa = weight(effectiveVolts, a, b, c);
        double wb = weight(effectiveVolts, b, a, c);
        double wc = weight(effectiveVolts, c, a, b);
        return new Point(
                effectiveVolts,
                wa * a.flowM3PerSecond() + wb * b.flowM3PerSecond() + wc * c.flowM3PerSecond(),
                wa * a.motorAmps() + wb * b.motorAmps() + wc * c.motorAmps());
    }

    /** Lagrange's weight of one point beside two others. */
    private static double weight(double volts, Point own, Point other, Point third) {
        return (volts - other.effectiveVolts())
                / (own.effectiveVolts() - other.effectiveVolts())
                * (volts - third.effectiveVolts())
                / (own.effectiveVolts() - third.effectiveVolts());
    }
}
