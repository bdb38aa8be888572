package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.curve.CurveLines;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.rule.DecisionNumbers;
import org.pumpwright.host.rule.Role;
import org.pumpwright.host.rule.Source;

/**
 * Holds each point of a sweep against the healthy curve: flow and motor current at the effective volts the unit really
 * had. Thread-safe.
 */
final class FeatureJudge {
    private final HealthyCurve curve;
    private final Plan plan;
    private final DecisionNumbers numbers;
    private final PointFigures figures;

    FeatureJudge(GradingInput input, HealthyCurve curve, List<PointReading> points) {
        this.curve = curve;
        plan = input.plan();
        numbers = input.rulesOrStandard().decision();
        figures = new PointFigures(input, curve, points);
    }

    /** Flow and motor current of every driven point, in the order of the sweep. */
    List<FeatureJudgement> judge(List<PointReading> points) {
        List<FeatureJudgement> features = new ArrayList<>();
        for (PointReading point : points) {
            if (point.driven()) {
                double volts = point.effectiveVolts(curve.freewheelVolts()).value();
                features.add(judgement(Feature.Kind.FLOW, point, figures.flow(point), curve.flow(volts)));
                features.add(
                        judgement(Feature.Kind.MOTOR_AMPS, point, figures.motorAmps(point), curve.motorAmps(volts)));
            }
        }
        return features;
    }

    /** Whether the plan makes this point part of the verdict. */
    static boolean isJudged(Plan plan, PointReading point) {
        return point.up() && plan.judged().contains(point.mark().commanded());
    }

    private FeatureJudgement judgement(Feature.Kind kind, PointReading point, PointFigure figure, Band band) {
        double volts = point.effectiveVolts(curve.freewheelVolts()).value();
        Limits limits = Limits.of("healthy range of curve " + curve.label(), band, source(volts));
        GuardBand guard = new GuardBand(numbers.guardFactor());
        boolean asked = isJudged(plan, point);
        return new FeatureJudgement(
                Feature.at(kind, point.mark().commanded(), point.mark().leg()),
                OptionalDouble.of(volts),
                figure.raw(),
                figure.corrections(),
                figure.measured(),
                figure.budget(),
                limits,
                new Guard(guard.factor(), guard.width(figure.measured()), numbers.guardSource()),
                guard.decide(figure.measured(), limits),
                asked && figure.outOfRange().isEmpty() ? Role.JUDGED : Role.INFORMATION,
                asked ? figure.outOfRange() : "");
    }

    private Source source(double volts) {
        return curve.lines()
                .map(lines ->
                        new Source(lines.file(), curve.version(), lines.points().get(curve.pointBelow(volts))))
                .orElse(new Source(CurveLines.FOLDER + "/" + curve.id(), curve.version(), 0));
    }
}
