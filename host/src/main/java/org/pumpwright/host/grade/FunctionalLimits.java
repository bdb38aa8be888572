package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.curve.CurveLines;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.LimitSet;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.rule.Role;
import org.pumpwright.host.rule.Source;

/**
 * Holds a unit against the limits of function that a curve carries, each set under its own name and with its own guard. A
 * limit stands at a value of effective volts; the unit is brought there from its nearest point along the shape of the
 * healthy curve, which is told as a correction. Thread-safe.
 */
final class FunctionalLimits {
    /** A point further away than this share of the volts says too little of the limit. */
    private static final double NEAR_SHARE = 0.08;

    private final HealthyCurve curve;
    private final List<FeatureJudgement> points;

    /** @param points the points of the sweep as they were held against the healthy range */
    FunctionalLimits(HealthyCurve curve, List<FeatureJudgement> points) {
        this.curve = curve;
        this.points = points.stream()
                .filter(point -> point.feature().onTheWayUp() && point.remark().isEmpty())
                .toList();
    }

    /** A judgement for each limit that the run reaches. */
    List<FeatureJudgement> judge() {
        List<FeatureJudgement> judged = new ArrayList<>();
        for (int set = 0; set < curve.limitSets().size(); set++) {
            LimitSet limits = curve.limitSets().get(set);
            for (int i = 0; i < limits.limits().size(); i++) {
                judge(set, i).ifPresent(judged::add);
            }
        }
        return judged;
    }

    /** Limits that no point of the run comes near to, in words. */
    List<String> notReached() {
        List<String> found = new ArrayList<>();
        for (LimitSet set : curve.limitSets()) {
            for (LimitSet.Limit limit : set.limits()) {
                if (nearest(limit).isEmpty()) {
                    found.add(Phrases.format(
                            "limit set %s: no point of the run comes near to %.2f effective volts",
                            set.name(), limit.effectiveVolts()));
                }
            }
        }
        return found;
    }

    private Optional<FeatureJudgement> nearest(LimitSet.Limit limit) {
        Feature.Kind kind = limit.quantity() == LimitSet.Quantity.FLOW ? Feature.Kind.FLOW : Feature.Kind.MOTOR_AMPS;
        return points.stream()
                .filter(point -> point.feature().quantity() == kind)
                .filter(point -> away(point, limit) <= NEAR_SHARE * limit.effectiveVolts())
                .min((a, b) -> Double.compare(away(a, limit), away(b, limit)));
    }

    private static double away(FeatureJudgement point, LimitSet.Limit limit) {
        return Math.abs(point.volts() - limit.effectiveVolts());
    }

    private Optional<FeatureJudgement> judge(int set, int number) {
        LimitSet limits = curve.limitSets().get(set);
        LimitSet.Limit limit = limits.limits().get(number);
        return nearest(limit).map(point -> judgement(point, limits, limit, sources(set, number)));
    }

    private record Sources(Source limit, Source guard) {}

    private Sources sources(int set, int number) {
        if (curve.lines().isEmpty()) {
            Source file = new Source(CurveLines.FOLDER + "/" + curve.id(), curve.version(), 0);
            return new Sources(file, file);
        }
        CurveLines lines = curve.lines().get();
        CurveLines.SetLines of = lines.sets().get(set);
        return new Sources(
                new Source(lines.file(), curve.version(), of.limits().get(number)),
                new Source(lines.file(), curve.version(), of.guard()));
    }

    private FeatureJudgement judgement(FeatureJudgement point, LimitSet set, LimitSet.Limit limit, Sources sources) {
        double factor = mean(point, limit.effectiveVolts()) / mean(point, point.volts());
        Uncertain there = point.measured().times(factor);
        List<Correction> corrections = new ArrayList<>(point.corrections());
        corrections.add(new Correction(
                "to the limit's volts",
                there.value() - point.measured().value(),
                0,
                true,
                Phrases.format("from %.2f to %.2f effective volts", point.volts(), limit.effectiveVolts())));
        Limits limits = new Limits(
                set.name() + " of curve " + curve.label(),
                limit.low().orElse(Double.NEGATIVE_INFINITY),
                OptionalDouble.empty(),
                limit.high().orElse(Double.POSITIVE_INFINITY),
                sources.limit,
                "outside what " + set.source() + " asks");
        GuardBand guard = new GuardBand(set.guardFactor());
        Feature.Kind kind = point.feature().quantity();
        return new FeatureJudgement(
                new Feature(
                        set.name() + "/" + point.feature().key(),
                        Phrases.format("%s at %.1f effective volts", kind.words(), limit.effectiveVolts()),
                        kind,
                        point.feature().unit(),
                        point.feature().place()),
                OptionalDouble.of(limit.effectiveVolts()),
                point.raw(),
                corrections,
                there,
                point.budget().stream()
                        .map(term -> new BudgetTerm(term.name(), term.standardUncertainty() * factor, term.through()))
                        .toList(),
                limits,
                new Guard(guard.factor(), guard.width(there), sources.guard),
                guard.decide(there, limits),
                Role.JUDGED,
                "");
    }

    private double mean(FeatureJudgement point, double volts) {
        CurvePoint healthy = curve.at(volts);
        return point.feature().quantity() == Feature.Kind.FLOW ? healthy.flowM3PerSecond() : healthy.motorAmps();
    }
}
