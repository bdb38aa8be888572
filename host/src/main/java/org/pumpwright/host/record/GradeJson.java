package org.pumpwright.host.record;

import static org.pumpwright.host.record.RecordLayout.list;
import static org.pumpwright.host.record.RecordLayout.number;
import static org.pumpwright.host.record.RecordLayout.object;
import static org.pumpwright.host.record.RecordLayout.texts;
import static org.pumpwright.host.record.RecordLayout.word;

import java.util.List;
import org.pumpwright.host.grade.ComplaintAnswer;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.trace.PointMark;
import tools.jackson.databind.node.ObjectNode;

/** The judgement as JSON. A feature's keys end in the unit of its quantity. Thread-safe. */
final class GradeJson {
    private GradeJson() {}

    static ObjectNode write(Grade grade) {
        ObjectNode node = object().put("verdict", word(grade.verdict())).put("advisory", grade.advisory());
        node.set("reasons", texts(grade.reasons()));
        node.set("stand_checks", list(grade.standChecks(), GradeJson::check));
        node.set("features", list(grade.features(), FeatureJson::write));
        if (!grade.findings().isEmpty()) {
            node.set("findings", list(grade.findings(), FindingJson::write));
        }
        node.set("causes", list(grade.causes(), GradeJson::cause));
        node.put("next_test", grade.nextTest()).put("rule", grade.rule());
        node.set(
                "explains_complaint",
                object().put("answer", word(grade.explains().answer()))
                        .put("why", grade.explains().why()));
        return node.put("attempt", grade.attempt());
    }

    static Grade read(JsonPlace at) {
        JsonPlace explains = at.at("explains_complaint");
        return read(
                at,
                at.at("features").list(FeatureJson::read),
                new ComplaintAnswer(
                        explains.at("answer").choice(ComplaintAnswer.Answer.class),
                        explains.at("why").text()),
                at.at("attempt").smallInteger());
    }

    /** A grade of the first format, which knew neither complaint nor attempt. */
    static Grade readFirst(JsonPlace at, List<PointMark> points) {
        return read(at, new FirstFormatFeatures(points).read(at.at("features")), ComplaintAnswer.NO_COMPLAINT, 1);
    }

    private static Grade read(JsonPlace at, List<FeatureJudgement> features, ComplaintAnswer explains, int attempt) {
        return new Grade(
                at.at("verdict").choice(Verdict.class),
                at.at("reasons").list(JsonPlace::text),
                at.at("stand_checks").list(GradeJson::check),
                features,
                at.at("findings").listOrNone(FindingJson::read),
                at.at("causes").list(GradeJson::cause),
                at.at("next_test").text(),
                at.at("rule").text(),
                at.at("advisory").flag(),
                explains,
                attempt);
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
        ObjectNode node = object().put("name", cause.name())
                .put("because", cause.because())
                .put("next_test", cause.nextTest());
        cause.numbers().ifPresent(numbers -> {
            node.set("share", number(numbers.share()));
            node.set("ln_behind_first", number(numbers.behind()));
            node.set("severity", number(numbers.severity()));
            node.set("squared_distance", number(numbers.misfit()));
            node.put("readings", numbers.readings());
        });
        return node;
    }

    private static Cause cause(JsonPlace at) {
        return new Cause(
                at.at("name").text(),
                at.at("because").text(),
                at.at("next_test").text(),
                at.at("share")
                        .ifThere(share -> new Cause.Numbers(
                                share.number(),
                                at.at("ln_behind_first").number(),
                                at.at("severity").number(),
                                at.at("squared_distance").number(),
                                at.at("readings").smallInteger())));
    }
}
