package org.pumpwright.host.report.retest;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.SpreadParts;
import org.pumpwright.host.grade.Feature;

/**
 * How far apart two runs of one unchanged unit are by chance: the spread from run to run of the known-good units behind a curve,
 * one standard deviation as a share of the mean. Straight lines join the curve's points. Thread-safe.
 */
public final class RunSpread {
    /** Nothing is known of it. */
    public static final RunSpread NOT_KNOWN = new RunSpread("", List.of());

    private final String curve;
    private final List<CurvePoint> points;

    private RunSpread(String curve, List<CurvePoint> points) {
        this.curve = curve;
        this.points = points;
    }

    /** The spread that a curve knows; nothing where its units were not run twice or it does not say. */
    public static RunSpread of(HealthyCurve curve) {
        boolean known = curve.points().stream().anyMatch(RunSpread::knows);
        return known ? new RunSpread(curve.label(), curve.points()) : NOT_KNOWN;
    }

    private static boolean knows(CurvePoint point) {
        return at(Feature.Kind.FLOW, point).isPresent()
                || at(Feature.Kind.MOTOR_AMPS, point).isPresent();
    }

    /** Label of the curve it comes from; blank where nothing is known. */
    public String curve() {
        return curve;
    }

    /** The standard deviation at a place, as a share of the mean; empty where it is not known. */
    public OptionalDouble share(Feature.Kind kind, double effectiveVolts) {
        if (kind == Feature.Kind.READING || points.isEmpty() || !Double.isFinite(effectiveVolts)) {
            return OptionalDouble.empty();
        }
        int upper = 0;
        while (upper < points.size() - 1 && points.get(upper).effectiveVolts() < effectiveVolts) {
            upper++;
        }
        CurvePoint high = points.get(upper);
        CurvePoint low = points.get(Math.max(0, upper - 1));
        OptionalDouble a = at(kind, low);
        OptionalDouble b = at(kind, high);
        if (a.isEmpty() || b.isEmpty()) {
            return OptionalDouble.empty();
        }
        double width = high.effectiveVolts() - low.effectiveVolts();
        double t = width > 0 ? Math.max(0, Math.min(1, (effectiveVolts - low.effectiveVolts()) / width)) : 0;
        return OptionalDouble.of(a.getAsDouble() + t * (b.getAsDouble() - a.getAsDouble()));
    }

    private static OptionalDouble at(Feature.Kind kind, CurvePoint point) {
        Optional<SpreadParts> parts = kind == Feature.Kind.FLOW ? point.flowParts() : point.motorAmpsParts();
        return parts.filter(known -> known.runSpread() > 0)
                .map(known -> OptionalDouble.of(known.runSpread()))
                .orElse(OptionalDouble.empty());
    }
}
