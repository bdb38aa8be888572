package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.quantity.Uncertain;

/**
 * Holds each point of a sweep against the healthy curve: flow and motor current at the effective volts the unit really
 * had. Thread-safe.
 */
final class FeatureJudge {
    private static final double SLOPE_STEP_VOLTS = 0.05;

    private final HealthyCurve curve;
    private final Plan plan;
    private final GuardBand guard;

    FeatureJudge(HealthyCurve curve, Plan plan, GuardBand guard) {
        this.curve = curve;
        this.plan = plan;
        this.guard = guard;
    }

    /** Flow and motor current of every driven point, in the order of the sweep. */
    List<FeatureJudgement> judge(List<PointReading> points) {
        List<FeatureJudgement> features = new ArrayList<>();
        for (PointReading point : points) {
            if (point.driven()) {
                features.add(flow(point));
                features.add(motorAmps(point));
            }
        }
        return features;
    }

    /** Whether the plan makes this point part of the verdict. */
    static boolean isJudged(Plan plan, PointReading point) {
        return point.up() && plan.judged().contains(point.mark().commanded());
    }

    private FeatureJudgement flow(PointReading point) {
        double volts = point.effectiveVolts(curve.freewheelVolts()).value();
        return judgement(Feature.Kind.FLOW, point, point.flow(), curve.flow(volts), CurvePoint::flowM3PerSecond);
    }

    private FeatureJudgement motorAmps(PointReading point) {
        double volts = point.effectiveVolts(curve.freewheelVolts()).value();
        return judgement(
                Feature.Kind.MOTOR_AMPS, point, point.motorAmps(), curve.motorAmps(volts), CurvePoint::motorAmps);
    }

    private FeatureJudgement judgement(
            Feature.Kind kind,
            PointReading point,
            Uncertain measured,
            Band limits,
            ToDoubleFunction<CurvePoint> healthy) {
        Uncertain volts = point.effectiveVolts(curve.freewheelVolts());
        double throughVolts = slope(healthy, volts.value()) * volts.standardUncertainty();
        Uncertain all = measured.with(Math.abs(throughVolts), volts.degreesOfFreedom());
        return new FeatureJudgement(
                new Feature(kind, point.mark().commanded()),
                volts.value(),
                all,
                limits,
                guard.width(all),
                guard.decide(all, limits),
                isJudged(plan, point));
    }

    /** Slope of the healthy mean per volt: how much an error of the volts moves the limits. */
    private double slope(ToDoubleFunction<CurvePoint> healthy, double volts) {
        double above = healthy.applyAsDouble(curve.at(volts + SLOPE_STEP_VOLTS));
        double below = healthy.applyAsDouble(curve.at(volts - SLOPE_STEP_VOLTS));
        return (above - below) / (2 * SLOPE_STEP_VOLTS);
    }
}
