package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;

/**
 * Ranks the patterns of an atlas by how well they explain what was measured. Each pattern runs from healthy through mild
 * and moderate to severe; the misfit of its best severity is the sum of squared differences over their variances (healthy
 * spread, measurement, and how much units with the same fault differ). Thread-safe.
 */
final class CauseRanking {
    /** Fewer set points fit too many patterns. */
    static final int LEAST_SET_POINTS = 3;

    /** Misfits this close cannot be told apart: two standard deviations of one feature. */
    static final double TIE_GAP = 4;

    /** A cause whose misfit is this much worse than the best is not worth a technician's time. */
    private static final double LISTED_GAP = 25;

    /** A pattern must take away at least this share of the misfit that a healthy unit would have. */
    private static final double LEAST_EXPLAINED = 0.5;

    /** How much two units with the same fault differ from its pattern, as a share of the deviation (assumed). */
    private static final double PATTERN_SHARE = 0.1;

    private static final int MOST_LISTED = 3;

    private final CauseAtlas atlas;
    private final List<Observation> observations;

    /** A cause and its misfit, the smaller the likelier. */
    record Ranked(CausePattern cause, double misfit) {}

    private record Observation(Feature feature, double percent, double variance) {}

    CauseRanking(CauseAtlas atlas, HealthyCurve curve, List<FeatureJudgement> upLeg) {
        this.atlas = atlas;
        observations = upLeg.stream()
                .filter(f -> atlas.reaches(f.feature().duty().percent()))
                .map(f -> observation(f, curve.at(f.effectiveVolts())))
                .toList();
    }

    private static Observation observation(FeatureJudgement f, CurvePoint healthy) {
        double spread = switch (f.feature().quantity()) {
            case FLOW -> healthy.flowSpread();
            case MOTOR_AMPS -> healthy.motorAmpsSpread();
        };
        double u = f.measured().standardUncertainty() / f.limits().centre();
        double pattern = PATTERN_SHARE * f.deviation();
        double variance = spread * spread + u * u + pattern * pattern;
        return new Observation(f.feature(), f.deviation() * 100, variance * 1e4);
    }

    /** The likeliest causes, at most three; none with too few set points, or when no pattern fits. */
    List<Ranked> rank(boolean nozzleIsSound) {
        long setPoints =
                observations.stream().map(o -> o.feature().duty()).distinct().count();
        if (setPoints < LEAST_SET_POINTS) {
            return List.of();
        }
        double healthy = misfit(new double[observations.size()]);
        List<Ranked> all = atlas.causes().stream()
                .filter(cause -> !(nozzleIsSound && cause.ruledOutByNozzleCheck()))
                .map(cause -> new Ranked(cause, bestMisfit(cause)))
                .filter(ranked -> ranked.misfit() <= (1 - LEAST_EXPLAINED) * healthy)
                .sorted(Comparator.comparingDouble(Ranked::misfit))
                .toList();
        return all.stream()
                .filter(ranked -> ranked.misfit() - all.get(0).misfit() <= LISTED_GAP)
                .limit(MOST_LISTED)
                .toList();
    }

    private double bestMisfit(CausePattern cause) {
        List<double[]> path = new ArrayList<>();
        if (!cause.allOrNothing()) {
            path.add(new double[observations.size()]);
        }
        cause.severities().forEach(change -> path.add(expected(change)));
        double best = misfit(path.get(0));
        for (int i = 1; i < path.size(); i++) {
            best = Math.min(best, misfit(nearest(path.get(i - 1), path.get(i))));
        }
        return best;
    }

    private double[] expected(CausePattern.Change change) {
        return observations.stream()
                .mapToDouble(o -> atlas.at(
                        change.of(o.feature().quantity()), o.feature().duty().percent()))
                .toArray();
    }

    /** The point between two severities that lies nearest to what was measured (weighted projection). */
    private double[] nearest(double[] milder, double[] graver) {
        double along = 0;
        double length = 0;
        for (int i = 0; i < milder.length; i++) {
            Observation o = observations.get(i);
            double step = graver[i] - milder[i];
            along += step * (o.percent() - milder[i]) / o.variance();
            length += step * step / o.variance();
        }
        double share = length == 0 ? 0 : Math.max(0, Math.min(1, along / length));
        double[] point = new double[milder.length];
        for (int i = 0; i < point.length; i++) {
            point[i] = milder[i] + share * (graver[i] - milder[i]);
        }
        return point;
    }

    private double misfit(double[] expected) {
        double sum = 0;
        for (int i = 0; i < expected.length; i++) {
            Observation o = observations.get(i);
            double off = o.percent() - expected[i];
            sum += off * off / o.variance();
        }
        return sum;
    }
}
