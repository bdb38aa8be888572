package org.pumpwright.host.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * The healthy population as its known-good runs show it: points with the spread between units and between runs, and the one
 * factor that holds all features of all points together. Thread-safe.
 *
 * @param units number of known-good units
 * @param runs number of their runs
 * @param features flow and motor current of every point
 * @param jointFactor see {@link JointBand}; {@value #INSIDE} of healthy units lie inside with every feature
 * @param points in order of effective volts
 */
public record CurvePopulation(int units, int runs, int features, double jointFactor, List<CurvePoint> points) {
    /** Share of healthy units that lie inside the band with every feature. */
    public static final double INSIDE = 0.99;

    /** Units that differ by more than this share of their mean do not all do the same thing. */
    private static final double MOST_SPREAD = 1;

    /** With fewer units the limits would be so wide that they say nothing. */
    public static final int LEAST_UNITS = 3;

    public CurvePopulation {
        points = List.copyOf(points);
    }

    /**
     * The population behind these runs.
     *
     * @param gridPoints number of points, 2 to 200
     * @throws IllegalArgumentException with fewer than {@link #LEAST_UNITS} units, when the runs share no range of effective
     *     volts, or when a mean is not above 0
     */
    public static CurvePopulation of(List<KnownGoodRun> runs, int gridPoints) {
        List<List<KnownGoodUnit>> units = byUnit(runs);
        if (units.size() < LEAST_UNITS) {
            throw new IllegalArgumentException("a healthy curve needs at least %d known-good units, there are %d"
                    .formatted(LEAST_UNITS, units.size()));
        }
        double[] grid =
                CurveBuilder.grid(runs.stream().map(KnownGoodRun::readings).toList(), gridPoints);
        List<CurvePoint> points = new ArrayList<>();
        List<double[]> deviations = new ArrayList<>();
        double degreesOfFreedom = units.size() - 1;
        for (double volts : grid) {
            List<double[]> flows = readings(units, volts, KnownGoodUnit.Point::flowM3PerSecond);
            List<double[]> amps = readings(units, volts, KnownGoodUnit.Point::motorAmps);
            VarianceComponents flow = components("flow", volts, flows);
            VarianceComponents current = components("motor current", volts, amps);
            points.add(point(volts, flow, current));
            deviations.add(VarianceComponents.deviations(flows));
            deviations.add(VarianceComponents.deviations(amps));
            degreesOfFreedom =
                    Math.min(degreesOfFreedom, Math.min(flow.degreesOfFreedom(), current.degreesOfFreedom()));
        }
        // Repeats only add degrees of freedom and only sharpen the mean, so counting units alone errs to the safe side.
        double factor = JointBand.factor(deviations, units.size(), Math.max(2, degreesOfFreedom), INSIDE);
        return new CurvePopulation(units.size(), runs.size(), deviations.size(), factor, points);
    }

    private static List<List<KnownGoodUnit>> byUnit(List<KnownGoodRun> runs) {
        TreeMap<String, List<KnownGoodUnit>> units = new TreeMap<>();
        for (KnownGoodRun run : runs) {
            units.computeIfAbsent(run.serial(), serial -> new ArrayList<>()).add(run.readings());
        }
        return List.copyOf(units.values());
    }

    private static List<double[]> readings(
            List<List<KnownGoodUnit>> units, double volts, ToDoubleFunction<KnownGoodUnit.Point> of) {
        return units.stream()
                .map(runs -> runs.stream()
                        .mapToDouble(run -> of.applyAsDouble(CurveBuilder.read(run, volts)))
                        .toArray())
                .toList();
    }

    private static VarianceComponents components(String what, double volts, List<double[]> readings) {
        VarianceComponents components = VarianceComponents.of(readings);
        if (!(components.mean() > 0)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the mean %s of the known-good units is %.3g at %.2f effective volts, it must be above 0",
                    what,
                    components.mean(),
                    volts));
        }
        double spread = Math.sqrt(components.totalVariance()) / components.mean();
        if (spread > MOST_SPREAD) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "at %.2f effective volts the %s of the known-good units differs by %.0f %% of its mean: some of them stand"
                            + " still there. Leave that set point out of the plan, and run the units again",
                    volts,
                    what,
                    spread * 100));
        }
        return components;
    }

    private static CurvePoint point(double volts, VarianceComponents flow, VarianceComponents current) {
        return new CurvePoint(
                volts,
                flow.mean(),
                Math.sqrt(flow.totalVariance()) / flow.mean(),
                current.mean(),
                Math.sqrt(current.totalVariance()) / current.mean(),
                Optional.of(SpreadParts.of(flow)),
                Optional.of(SpreadParts.of(current)));
    }
}
