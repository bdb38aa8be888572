package org.pumpwright.host.grade.finding;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Uncertain;

/**
 * K of a rotor meter that lags: {@code f = K_inf (Q - b)}, so {@code K = f/Q = K_inf - K_inf b / Q}, a straight line over
 * 1/Q, by weighted least squares (textbook; the model is the usual one of a rotor with a constant drag). Weights are those of
 * the counted frequencies alone. Where the points scatter more than their weights say, the uncertainties grow by the root of
 * chi-square over the degrees of freedom (Birge ratio). The master's share is the caller's to add. Thread-safe.
 *
 * @param limit K_inf, pulses per m3
 * @param lag b, m3/s
 */
record MeterLine(Uncertain limit, Uncertain lag, double slope, Covariance covariance) {
    private static final int LEAST_FLOWS = 3;

    /** Points closer than this share are one flow, read twice. */
    private static final double SAME_FLOW = 0.02;

    /**
     * One point.
     *
     * @param flow the master's, m3/s
     * @param k pulses per m3, with the scatter of both counts
     */
    record Point(double flow, Uncertain k) {}

    /** Of K_inf and the slope over 1/Q. */
    record Covariance(double ofLimit, double ofSlope, double both, double degreesOfFreedom) {}

    /** Empty with fewer than three different flows. */
    static Optional<MeterLine> of(List<Point> points) {
        return flows(points) < LEAST_FLOWS ? Optional.empty() : Optional.of(fit(points));
    }

    static int flows(List<Point> points) {
        double[] sorted = points.stream().mapToDouble(Point::flow).sorted().toArray();
        int flows = 0;
        double last = 0;
        for (double flow : sorted) {
            if (flow > last * (1 + SAME_FLOW)) {
                flows++;
                last = flow;
            }
        }
        return flows;
    }

    private static MeterLine fit(List<Point> points) {
        double w = 0;
        double wx = 0;
        double wxx = 0;
        double wy = 0;
        double wxy = 0;
        for (Point point : points) {
            double x = 1 / point.flow();
            double weight = 1 / (point.k().standardUncertainty() * point.k().standardUncertainty());
            w += weight;
            wx += weight * x;
            wxx += weight * x * x;
            wy += weight * point.k().value();
            wxy += weight * x * point.k().value();
        }
        double determinant = w * wxx - wx * wx;
        double limit = (wxx * wy - wx * wxy) / determinant;
        double slope = (w * wxy - wx * wy) / determinant;
        double birge = birge(points, limit, slope);
        double freedom = Math.max(1, points.size() - 2);
        Covariance covariance =
                new Covariance(wxx / determinant * birge, w / determinant * birge, -wx / determinant * birge, freedom);
        return new MeterLine(
                new Uncertain(limit, Math.sqrt(covariance.ofLimit()), freedom),
                lag(limit, slope, covariance),
                slope,
                covariance);
    }

    /** Chi-square over the degrees of freedom, 1 at least. */
    private static double birge(List<Point> points, double limit, double slope) {
        double squares = 0;
        for (Point point : points) {
            double left = (point.k().value() - limit - slope / point.flow())
                    / point.k().standardUncertainty();
            squares += left * left;
        }
        return Math.max(1, squares / Math.max(1, points.size() - 2));
    }

    /** {@code b = -slope / K_inf}, both correlated (JCGM 100, 5.2.2). */
    private static Uncertain lag(double limit, double slope, Covariance c) {
        double bySlope = -1 / limit;
        double byLimit = slope / (limit * limit);
        double variance =
                bySlope * bySlope * c.ofSlope() + byLimit * byLimit * c.ofLimit() + 2 * bySlope * byLimit * c.both();
        return new Uncertain(-slope / limit, Math.sqrt(Math.max(0, variance)), c.degreesOfFreedom());
    }

    /** K at a flow. */
    Uncertain at(double flow) {
        double x = 1 / flow;
        double variance = covariance.ofLimit() + x * x * covariance.ofSlope() + 2 * x * covariance.both();
        return new Uncertain(
                limit.value() + slope * x, Math.sqrt(Math.max(0, variance)), covariance.degreesOfFreedom());
    }
}
