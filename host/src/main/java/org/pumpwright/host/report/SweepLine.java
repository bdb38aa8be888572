package org.pumpwright.host.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;

/**
 * One point of the sweep with everything that was judged there: one line of the table, one spot in each chart. Thread-safe.
 *
 * @param point the point as it was carried out; empty when a feature fits none
 * @param duty the set point
 * @param features what was judged or shown there
 */
record SweepLine(Optional<PointMark> point, Duty duty, Map<Feature.Kind, FeatureJudgement> features) {
    /** What is held against the healthy curve at each point. */
    static final List<Feature.Kind> KINDS = List.of(Feature.Kind.FLOW, Feature.Kind.MOTOR_AMPS);

    /** A board that rounds the duty to its own steps may be this far from the set point. */
    private static final int DUTY_TOLERANCE_PARTS = Duty.FULL_PARTS / 100;

    Optional<FeatureJudgement> feature(Feature.Kind kind) {
        return Optional.ofNullable(features.get(kind));
    }

    Optional<Leg> leg() {
        return point.map(PointMark::leg);
    }

    double effectiveVolts() {
        return features.values().iterator().next().volts();
    }

    boolean judged() {
        return features.values().stream().anyMatch(FeatureJudgement::judged);
    }

    /** The lines of a run: each feature belongs to the next point of its duty and its leg. */
    static List<SweepLine> of(RunRecord run) {
        List<PointMark> points = run.trace().points();
        Map<Integer, Map<Feature.Kind, FeatureJudgement>> byPoint = new TreeMap<>();
        List<SweepLine> strays = new ArrayList<>();
        for (Feature.Kind kind : KINDS) {
            int next = 0;
            for (FeatureJudgement judged : run.grade().points()) {
                if (judged.feature().quantity() != kind) {
                    continue;
                }
                int found = find(points, next, judged.feature());
                if (found < 0) {
                    strays.add(new SweepLine(Optional.empty(), judged.feature().duty(), Map.of(kind, judged)));
                } else {
                    byPoint.computeIfAbsent(found, i -> new EnumMap<>(Feature.Kind.class))
                            .put(kind, judged);
                    next = found + 1;
                }
            }
        }
        List<SweepLine> lines = new ArrayList<>();
        byPoint.forEach((i, features) -> lines.add(
                new SweepLine(Optional.of(points.get(i)), points.get(i).commanded(), features)));
        lines.addAll(strays);
        return lines;
    }

    private static int find(List<PointMark> points, int from, Feature feature) {
        Optional<Leg> leg = feature.place().flatMap(Feature.Place::leg);
        for (int i = from; i < points.size(); i++) {
            PointMark point = points.get(i);
            int off = Math.abs(point.commanded().parts() - feature.duty().parts());
            if (off <= DUTY_TOLERANCE_PARTS && leg.map(point.leg()::equals).orElse(true)) {
                return i;
            }
        }
        return -1;
    }
}
