package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;
import static org.pumpwright.host.grade.StandChecks.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;

/** Whether the healthy curve may be held against this run. Thread-safe. */
final class CurveChecks {
    /**
     * Effective volts this share beyond the ends are judged by the end: a unit that draws no current has that much more at
     * its pins than a healthy one.
     */
    private static final double BEYOND_SHARE = 0.08;

    private static final double RANGE_FACTOR = 2;

    private final GradingInput input;
    private final HealthyCurve curve;
    private final List<PointReading> judged;

    private CurveChecks(GradingInput input, HealthyCurve curve, List<PointReading> points) {
        this.input = input;
        this.curve = curve;
        judged = points.stream()
                .filter(point -> FeatureJudge.isJudged(input.plan(), point))
                .toList();
    }

    static List<StandCheck> of(GradingInput input, HealthyCurve curve, List<PointReading> points) {
        CurveChecks checks = new CurveChecks(input, curve, points);
        List<StandCheck> found = new ArrayList<>();
        found.add(checks.belongs());
        checks.reaches().ifPresent(found::add);
        checks.meterRange().ifPresent(found::add);
        return found;
    }

    private StandCheck belongs() {
        List<String> differences = curve.conditions().differences(input.conditions());
        return check(
                "curve",
                differences.isEmpty(),
                differences.isEmpty()
                        ? curve.label() + " belongs to this model, driver, nozzle and fluid"
                        : curve.label() + " does not belong to this run: " + String.join(", ", differences),
                "choose the curve of these conditions, or make one");
    }

    private Optional<StandCheck> reaches() {
        return judged.stream().max(Comparator.comparingDouble(this::beyond)).map(this::reaches);
    }

    private double volts(PointReading point) {
        return point.effectiveVolts(curve.freewheelVolts()).value();
    }

    private double lowest() {
        return curve.points().get(0).effectiveVolts();
    }

    private double highest() {
        return curve.points().get(curve.points().size() - 1).effectiveVolts();
    }

    private double beyond(PointReading point) {
        double volts = volts(point);
        return Math.max(lowest() * (1 - BEYOND_SHARE) - volts, volts - highest() * (1 + BEYOND_SHARE));
    }

    private StandCheck reaches(PointReading worst) {
        return check(
                "curve range",
                beyond(worst) <= 0,
                format(
                        "%.2f effective volts at %s, %s reaches from %.2f to %.2f V",
                        volts(worst), worst.mark().commanded().print(), curve.label(), lowest(), highest()),
                "choose a curve that reaches the judged set points");
    }

    /** Asked of what a healthy unit gives: a unit that gives less is not the meter's fault. */
    private Optional<StandCheck> meterRange() {
        return judged.stream()
                .min(Comparator.comparingDouble(this::healthyFlow))
                .map(this::meterRange);
    }

    private double healthyFlow(PointReading point) {
        return curve.at(volts(point)).flowM3PerSecond();
    }

    private StandCheck meterRange(PointReading least) {
        double needed =
                RANGE_FACTOR * input.trace().channels().flowMeter().least().m3PerSecond();
        double healthy = healthyFlow(least);
        Duty duty = least.mark().commanded();
        return check(
                "meter range",
                healthy >= needed,
                format(
                        "a healthy unit gives %s at %s, the meter is good from %s",
                        new FlowRate(healthy).print(input.units()),
                        duty.print(),
                        new FlowRate(needed).print(input.units())),
                "fit a smaller meter, or judge at higher set points");
    }
}
