package org.pumpwright.host.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.signal.Statistics;

/**
 * Makes the points of a healthy curve from known-good units: each unit is read at the same values of effective volts, and
 * mean and standard deviation are taken between the units. The scatter of the measurement is in the standard deviation too,
 * which makes the limits wider, never narrower. Thread-safe.
 */
public final class CurveBuilder {
    /**
     * How far a unit may be read beyond its ends, as a share of its own span. A unit that draws less current, or a stand
     * whose supply is a little high, comes to a little more effective volts than the known-good units did.
     */
    static final double REACH_ABOVE = 0.08;

    static final double REACH_BELOW = 0.02;

    private CurveBuilder() {}

    /**
     * The widest even grid that every unit reaches.
     *
     * @param count number of values, 2 to 200
     * @throws IllegalArgumentException without units, or when their ranges do not overlap
     */
    public static double[] grid(List<KnownGoodUnit> units, int count) {
        Require.inRange("number of curve points", count, 2, 200, "");
        requireUnits(units);
        double low = units.stream().mapToDouble(CurveBuilder::reachBelow).max().orElseThrow();
        double high = units.stream().mapToDouble(CurveBuilder::reachAbove).min().orElseThrow();
        if (high <= low) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the known-good units share no range of effective volts: one begins at %.2f V, another ends at %.2f V",
                    low,
                    high));
        }
        double[] grid = new double[count];
        for (int i = 0; i < count; i++) {
            grid[i] = low + (high - low) * i / (count - 1);
        }
        return grid;
    }

    /**
     * The curve's points.
     *
     * @param units known-good units, at least two
     * @param gridVolts effective volts of the points, ascending
     * @throws IllegalArgumentException with fewer than two units, or when a unit does not reach a value of the grid
     */
    public static List<CurvePoint> points(List<KnownGoodUnit> units, double[] gridVolts) {
        requireUnits(units);
        List<CurvePoint> points = new ArrayList<>();
        for (double volts : gridVolts) {
            List<KnownGoodUnit.Point> readings =
                    units.stream().map(unit -> read(unit, volts)).toList();
            double[] flows = column(readings, KnownGoodUnit.Point::flowM3PerSecond);
            double[] amps = column(readings, KnownGoodUnit.Point::motorAmps);
            points.add(new CurvePoint(
                    volts,
                    Statistics.mean(flows),
                    Statistics.coefficientOfVariation(flows),
                    Statistics.mean(amps),
                    Statistics.coefficientOfVariation(amps)));
        }
        return List.copyOf(points);
    }

    private static void requireUnits(List<KnownGoodUnit> units) {
        if (units.size() < 2) {
            throw new IllegalArgumentException(
                    "a healthy curve needs at least 2 known-good units, there are " + units.size());
        }
    }

    static KnownGoodUnit.Point read(KnownGoodUnit unit, double volts) {
        double slack = 1e-9 * (unit.highest() - unit.lowest());
        Require.inRange("effective volts", volts, reachBelow(unit) - slack, reachAbove(unit) + slack, "V");
        return unit.at(volts);
    }

    private static double reachBelow(KnownGoodUnit unit) {
        return unit.lowest() - REACH_BELOW * (unit.highest() - unit.lowest());
    }

    private static double reachAbove(KnownGoodUnit unit) {
        return unit.highest() + REACH_ABOVE * (unit.highest() - unit.lowest());
    }

    private static double[] column(List<KnownGoodUnit.Point> points, ToDoubleFunction<KnownGoodUnit.Point> of) {
        return points.stream().mapToDouble(of).toArray();
    }
}
