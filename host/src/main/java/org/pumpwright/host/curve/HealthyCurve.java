package org.pumpwright.host.curve;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.pumpwright.host.quantity.Require;

/**
 * One version of a healthy curve. Flow and motor current are held against <em>effective volts</em>, the mean voltage that
 * the motor sees, so that the supply's voltage drops out: {@code U = d * V_pins - (1 - d) * V_freewheel}, the mean output
 * of a switch with a freewheel diode in continuous conduction (textbook step-down converter). The motor current is the
 * supply current over the duty, for the same reason. Thread-safe.
 *
 * @param id short name
 * @param version counts up with every change
 * @param title for people
 * @param conditions what it belongs to
 * @param simulated true when its units were simulated: then it serves practice only
 * @param units number of known-good units behind it
 * @param toleranceFactor two-sided factor k for that number of units, by which the spread is multiplied
 * @param coverage the share of healthy units that the limits hold, and the confidence, in words
 * @param freewheelVolts drop of the freewheel diode, V
 * @param points in order of effective volts, at least two
 * @param author who made it
 * @param made date, ISO 8601
 * @param interpolation how it goes between its points
 * @param basis what it was built from; empty for curves that do not say
 * @param approval who let it be used; empty while nobody has
 * @param limitSets limits of function, beside the healthy band
 * @param lines where its numbers stand in its file; empty for a curve that was not read from one
 */
public record HealthyCurve(
        String id,
        int version,
        String title,
        Conditions conditions,
        boolean simulated,
        int units,
        double toleranceFactor,
        String coverage,
        double freewheelVolts,
        List<CurvePoint> points,
        String author,
        String made,
        Interpolation interpolation,
        Optional<Basis> basis,
        Optional<Approval> approval,
        List<LimitSet> limitSets,
        Optional<CurveLines> lines) {
    /** Below this many units a curve only advises. */
    public static final int LEAST_UNITS = 5;

    public HealthyCurve {
        points = List.copyOf(points);
        limitSets = List.copyOf(limitSets);
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "curve %s has %d points, it needs at least 2".formatted(id, points.size()));
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).effectiveVolts() <= points.get(i - 1).effectiveVolts()) {
                throw new IllegalArgumentException(
                        "curve %s: point %d does not lie above the one before it".formatted(id, i + 1));
            }
        }
        Require.inRange("tolerance factor", toleranceFactor, 1, 100, "");
    }

    /** A curve that was not read from a file. */
    public HealthyCurve(
            String id,
            int version,
            String title,
            Conditions conditions,
            boolean simulated,
            int units,
            double toleranceFactor,
            String coverage,
            double freewheelVolts,
            List<CurvePoint> points,
            String author,
            String made,
            Interpolation interpolation,
            Optional<Basis> basis,
            Optional<Approval> approval,
            List<LimitSet> limitSets) {
        this(
                id,
                version,
                title,
                conditions,
                simulated,
                units,
                toleranceFactor,
                coverage,
                freewheelVolts,
                points,
                author,
                made,
                interpolation,
                basis,
                approval,
                limitSets,
                Optional.empty());
    }

    /** A curve of straight lines that does not say what it was built from. */
    public HealthyCurve(
            String id,
            int version,
            String title,
            Conditions conditions,
            boolean simulated,
            int units,
            double toleranceFactor,
            String coverage,
            double freewheelVolts,
            List<CurvePoint> points,
            String author,
            String made) {
        this(
                id,
                version,
                title,
                conditions,
                simulated,
                units,
                toleranceFactor,
                coverage,
                freewheelVolts,
                points,
                author,
                made,
                Interpolation.LINEAR,
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /** The same curve, let be used by a named person. */
    public HealthyCurve approved(Approval by) {
        return new HealthyCurve(
                id,
                version,
                title,
                conditions,
                simulated,
                units,
                toleranceFactor,
                coverage,
                freewheelVolts,
                points,
                author,
                made,
                interpolation,
                basis,
                Optional.of(by),
                limitSets);
    }

    /** The same curve without word of where its numbers stand: equal to the one that was written. */
    public HealthyCurve withoutLines() {
        return withLines(Optional.empty());
    }

    HealthyCurve withLines(Optional<CurveLines> where) {
        return new HealthyCurve(
                id,
                version,
                title,
                conditions,
                simulated,
                units,
                toleranceFactor,
                coverage,
                freewheelVolts,
                points,
                author,
                made,
                interpolation,
                basis,
                approval,
                limitSets,
                where);
    }

    /** The number of the point at or below a value of effective volts, from 0; the first one below them all. */
    public int pointBelow(double effectiveVolts) {
        int below = 0;
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).effectiveVolts() <= effectiveVolts) {
                below = i;
            }
        }
        return below;
    }

    /** The id and version as they are printed on every paper. */
    public String label() {
        return id + " v" + version;
    }

    /** True when the curve can give no more than advice: too few units stand behind it, or nobody has approved it yet. */
    public boolean provisional() {
        return fewUnits() || awaitsApproval();
    }

    /** True when fewer than {@link #LEAST_UNITS} units stand behind it. */
    public boolean fewUnits() {
        return units < LEAST_UNITS;
    }

    /** True when it was built from records and nobody has approved it. Older curves do not know approval. */
    public boolean awaitsApproval() {
        return basis.isPresent() && approval.isEmpty();
    }

    /** The healthy population at a value of effective volts, the nearest end outside the points. */
    public CurvePoint at(double effectiveVolts) {
        int upper = 1;
        while (upper < points.size() - 1 && points.get(upper).effectiveVolts() < effectiveVolts) {
            upper++;
        }
        double low = points.get(upper - 1).effectiveVolts();
        double share = (effectiveVolts - low) / (points.get(upper).effectiveVolts() - low);
        double t = Math.max(0, Math.min(1, share));
        return new CurvePoint(
                effectiveVolts,
                between(CurvePoint::flowM3PerSecond, upper, t),
                between(CurvePoint::flowSpread, upper, t),
                between(CurvePoint::motorAmps, upper, t),
                between(CurvePoint::motorAmpsSpread, upper, t));
    }

    /** Healthy range of flow, m3/s. */
    public Band flow(double effectiveVolts) {
        CurvePoint p = at(effectiveVolts);
        return band(p.flowM3PerSecond(), p.flowSpread());
    }

    /** Healthy range of motor current, A. */
    public Band motorAmps(double effectiveVolts) {
        CurvePoint p = at(effectiveVolts);
        return band(p.motorAmps(), p.motorAmpsSpread());
    }

    private Band band(double mean, double spread) {
        double half = toleranceFactor * spread * mean;
        return new Band(mean - half, mean, mean + half);
    }

    private double between(ToDoubleFunction<CurvePoint> of, int upper, double t) {
        double a = of.applyAsDouble(points.get(upper - 1));
        double b = of.applyAsDouble(points.get(upper));
        return switch (interpolation) {
            case LINEAR -> a + t * (b - a);
            case MONOTONE ->
                new MonotoneCubic(
                                points.size(),
                                i -> points.get(i).effectiveVolts(),
                                i -> of.applyAsDouble(points.get(i)))
                        .at(upper, t);
        };
    }
}
