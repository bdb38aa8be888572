package org.pumpwright.host.record;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Guard;
import org.pumpwright.host.grade.Limits;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.rule.Role;
import org.pumpwright.host.rule.Source;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;

/**
 * Judged features as the first format kept them: flow and motor amps at points of a sweep, without the leg, which the order
 * of the points tells, and without word of where a limit stood. Confined to one thread.
 */
final class FirstFormatFeatures {
    private static final double GUARD_FACTOR = 1.645;

    private final List<PointMark> points;
    private int next;

    FirstFormatFeatures(List<PointMark> points) {
        this.points = points;
    }

    List<FeatureJudgement> read(JsonPlace list) {
        return list.list(this::feature);
    }

    private FeatureJudgement feature(JsonPlace at) {
        Feature.Kind kind = at.at("quantity").choice(Feature.Kind.class);
        String unit = kind == Feature.Kind.FLOW ? "m3_per_second" : "amps";
        boolean judged = at.at("judged").flag();
        Duty duty = new Duty(at.at("duty_65536ths").smallInteger());
        Band band = new Band(
                at.at("healthy_low_" + unit).number(),
                at.at("healthy_mean_" + unit).number(),
                at.at("healthy_high_" + unit).number());
        return new FeatureJudgement(
                Feature.at(kind, new Feature.Place(duty, leg(duty, kind))),
                OptionalDouble.of(at.at("effective_volts").number()),
                new Uncertain(
                        at.at("measured_" + unit).number(),
                        at.at("standard_uncertainty_" + unit).number(),
                        at.at("degrees_of_freedom").number()),
                Limits.of("healthy range", band, Source.NOT_KEPT),
                new Guard(GUARD_FACTOR, at.at("guard_" + unit).number(), Source.PROGRAM),
                at.at("decision").choice(FeatureJudgement.Decision.class),
                judged ? Role.JUDGED : Role.INFORMATION);
    }

    /** Flow and then amps of each driven point, in the order of the sweep. */
    private Optional<Leg> leg(Duty duty, Feature.Kind kind) {
        for (int i = next; i < points.size(); i++) {
            if (points.get(i).commanded().equals(duty)) {
                next = kind == Feature.Kind.MOTOR_AMPS ? i + 1 : i;
                return Optional.of(points.get(i).leg());
            }
        }
        return Optional.empty();
    }
}
