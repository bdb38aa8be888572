package org.pumpwright.host.record;

import static org.pumpwright.host.record.RecordLayout.list;
import static org.pumpwright.host.record.RecordLayout.number;
import static org.pumpwright.host.record.RecordLayout.object;
import static org.pumpwright.host.record.RecordLayout.texts;
import static org.pumpwright.host.record.RecordLayout.word;

import org.pumpwright.host.curve.Band;
import org.pumpwright.host.grade.Cause;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Uncertain;
import tools.jackson.databind.node.ObjectNode;

/** The judgement as JSON. A feature's keys end in the unit of its quantity. Thread-safe. */
final class GradeJson {
    private GradeJson() {}

    static ObjectNode write(Grade grade) {
        ObjectNode node = object().put("verdict", word(grade.verdict())).put("advisory", grade.advisory());
        node.set("reasons", texts(grade.reasons()));
        node.set("stand_checks", list(grade.standChecks(), GradeJson::check));
        node.set("features", list(grade.features(), GradeJson::feature));
        // A record from before steps had findings is written again as it was.
        if (!grade.findings().isEmpty()) {
            node.set("findings", list(grade.findings(), FindingJson::write));
        }
        node.set("causes", list(grade.causes(), GradeJson::cause));
        return node.put("next_test", grade.nextTest()).put("rule", grade.rule());
    }

    static Grade read(JsonPlace at) {
        return new Grade(
                at.at("verdict").choice(Verdict.class),
                at.at("reasons").list(JsonPlace::text),
                at.at("stand_checks").list(GradeJson::check),
                at.at("features").list(GradeJson::feature),
                at.at("findings").listOrNone(FindingJson::read),
                at.at("causes").list(GradeJson::cause),
                at.at("next_test").text(),
                at.at("rule").text(),
                at.at("advisory").flag());
    }

    private static ObjectNode check(StandCheck check) {
        return object().put("name", check.name())
                .put("ok", check.ok())
                .put("finding", check.finding())
                .put("remedy", check.remedy());
    }

    private static StandCheck check(JsonPlace at) {
        return new StandCheck(
                at.at("name").text(),
                at.at("ok").flag(),
                at.at("finding").text(),
                at.at("remedy").text());
    }

    private static ObjectNode cause(Cause cause) {
        return object().put("name", cause.name())
                .put("because", cause.because())
                .put("next_test", cause.nextTest());
    }

    private static Cause cause(JsonPlace at) {
        return new Cause(
                at.at("name").text(),
                at.at("because").text(),
                at.at("next_test").text());
    }

    private static ObjectNode feature(FeatureJudgement judged) {
        Feature.Kind kind = judged.feature().quantity();
        String unit = unit(kind);
        ObjectNode node = object().put("quantity", word(kind))
                .put("duty_65536ths", judged.feature().duty().parts());
        node.set("effective_volts", number(judged.effectiveVolts()));
        node.set("measured_" + unit, number(judged.measured().value()));
        node.set("standard_uncertainty_" + unit, number(judged.measured().standardUncertainty()));
        node.set("degrees_of_freedom", number(judged.measured().degreesOfFreedom()));
        node.set("healthy_low_" + unit, number(judged.limits().low()));
        node.set("healthy_mean_" + unit, number(judged.limits().centre()));
        node.set("healthy_high_" + unit, number(judged.limits().high()));
        node.set("guard_" + unit, number(judged.guard()));
        return node.put("decision", word(judged.decision())).put("judged", judged.judged());
    }

    private static FeatureJudgement feature(JsonPlace at) {
        Feature.Kind kind = at.at("quantity").choice(Feature.Kind.class);
        String unit = unit(kind);
        return new FeatureJudgement(
                new Feature(kind, new Duty(at.at("duty_65536ths").smallInteger())),
                at.at("effective_volts").number(),
                new Uncertain(
                        at.at("measured_" + unit).number(),
                        at.at("standard_uncertainty_" + unit).number(),
                        at.at("degrees_of_freedom").number()),
                new Band(
                        at.at("healthy_low_" + unit).number(),
                        at.at("healthy_mean_" + unit).number(),
                        at.at("healthy_high_" + unit).number()),
                at.at("guard_" + unit).number(),
                at.at("decision").choice(FeatureJudgement.Decision.class),
                at.at("judged").flag());
    }

    private static String unit(Feature.Kind kind) {
        return switch (kind) {
            case FLOW -> "m3_per_second";
            case MOTOR_AMPS -> "amps";
        };
    }
}
