package org.pumpwright.host.ui.work;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.ui.work.SweepView.Dot;
import org.pumpwright.host.ui.work.SweepView.Healthy;
import org.pumpwright.host.ui.work.SweepView.Lies;
import org.pumpwright.host.ui.work.SweepView.Spot;

/** The sweep of a run on record, as it was judged. Thread-safe. */
final class RunCurve {
    /** The error bar is this many standard uncertainties (JCGM 100, 6.2.1), about 95 % coverage. */
    private static final double COVERAGE_FACTOR = 2;

    private RunCurve() {}

    /** Flow, or motor current, over effective volts; in SI units. */
    static SweepView of(RunRecord run, Feature.Kind kind) {
        List<FeatureJudgement> points = run.grade().points().stream()
                .filter(point -> point.feature().quantity() == kind && Double.isFinite(point.volts()))
                .toList();
        return new SweepView(band(points), points.stream().map(RunCurve::dot).toList(), Optional.empty());
    }

    private static List<Healthy> band(List<FeatureJudgement> points) {
        return points.stream()
                .filter(point -> point.feature().onTheWayUp() && Double.isFinite(point.centre()))
                .sorted(Comparator.comparingDouble(FeatureJudgement::volts))
                .map(point -> new Healthy(
                        point.volts(),
                        point.limits().low(),
                        point.centre(),
                        point.limits().high()))
                .toList();
    }

    private static Dot dot(FeatureJudgement point) {
        Leg leg = point.feature().place().flatMap(Feature.Place::leg).orElse(Leg.UP);
        return new Dot(
                new Spot(point.volts(), point.measured().value()),
                COVERAGE_FACTOR * point.measured().standardUncertainty(),
                leg,
                point.judged() ? lies(point.decision()) : Lies.INSIDE);
    }

    private static Lies lies(FeatureJudgement.Decision decision) {
        return switch (decision) {
            case INSIDE -> Lies.INSIDE;
            case LOW -> Lies.BELOW;
            case HIGH -> Lies.ABOVE;
            case NEAR_LOW, NEAR_HIGH -> Lies.NEAR;
        };
    }
}
