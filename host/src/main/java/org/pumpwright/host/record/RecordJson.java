package org.pumpwright.host.record;

import static org.pumpwright.host.record.RecordLayout.integer;
import static org.pumpwright.host.record.RecordLayout.number;
import static org.pumpwright.host.record.RecordLayout.object;
import static org.pumpwright.host.record.RecordLayout.texts;
import static org.pumpwright.host.record.RecordLayout.word;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.record.RunRecord.CurveUsed;
import org.pumpwright.host.record.RunRecord.StandUsed;
import org.pumpwright.host.record.RunRecord.Subject;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Trace;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.NullNode;
import tools.jackson.databind.node.ObjectNode;

/** The whole record as JSON, except the judgement and the trace, which have classes of their own. Thread-safe. */
final class RecordJson {
    private RecordJson() {}

    static ObjectNode write(RunRecord run) {
        ObjectNode root = writeAllButTheTrace(run);
        root.set("trace", TraceJson.write(run.trace()));
        return root;
    }

    static ObjectNode writeAllButTheTrace(RunRecord run) {
        ObjectNode root = object().put("format", RunRecordFile.FORMAT)
                .put("id", run.id())
                .put("started_at", run.startedAt().toString())
                .put("software", run.software());
        root.set("subject", subject(run.subject()));
        root.set("stand", stand(run.stand()));
        root.set("conditions", conditions(run.conditions()));
        root.put("plan", run.plan());
        root.set("curve", curve(run.curve()));
        root.set(
                "ending",
                object().put("kind", word(run.ending().kind()))
                        .put("reason", run.ending().reason()));
        root.set("intake", intake(run.intake()));
        root.put("rules", run.rules().orElse(null));
        root.put("regraded_from", run.regradedFrom().orElse(null));
        root.set("grade", GradeJson.write(run.grade()));
        return root;
    }

    /** A record of this format or of the first one. */
    static RunRecord read(JsonPlace root) {
        return read(root, TraceJson.read(root.at("trace")));
    }

    /** The same with a trace that is kept elsewhere. */
    static RunRecord read(JsonPlace root, Trace trace) {
        boolean first = root.at("format").text().equals(RunRecordFile.FIRST_FORMAT);
        return new RunRecord(
                root.at("id").text(),
                time(root.at("started_at")),
                root.at("software").text(),
                subject(root.at("subject")),
                stand(root.at("stand")),
                conditions(root.at("conditions")),
                root.at("plan").text(),
                root.at("curve").optional(RecordJson::curve),
                ending(root.at("ending")),
                first ? GradeJson.readFirst(root.at("grade"), trace.points()) : GradeJson.read(root.at("grade")),
                trace,
                first ? Intake.NONE : intake(root.at("intake")),
                first ? Optional.empty() : root.at("rules").optional(JsonPlace::text),
                first ? Optional.empty() : root.at("regraded_from").optional(JsonPlace::text));
    }

    private static ObjectNode intake(Intake intake) {
        ObjectNode node = object().put("complaint", intake.complaint().orElse(null));
        node.set("safety_observations", texts(intake.safetyObservations()));
        node.put("not_testable", intake.notTestable().orElse(null)).put("attempt", intake.attempt());
        node.set("earlier_runs", texts(intake.earlierRuns()));
        intake.decision().ifPresent(made -> node.set("decision", decision(made)));
        intake.claim().ifPresent(claim -> node.put("claim", claim));
        // Only where something is known: records from before it was kept stay as they are, to the byte.
        if (!intake.handling().equals(Handling.UNKNOWN)) {
            node.set("handling", handling(intake.handling()));
        }
        return node;
    }

    private static Intake intake(JsonPlace at) {
        return new Intake(
                at.at("complaint").optional(JsonPlace::text),
                at.at("safety_observations").list(JsonPlace::text),
                at.at("not_testable").optional(JsonPlace::text),
                at.at("attempt").smallInteger(),
                at.at("earlier_runs").list(JsonPlace::text),
                at.at("decision").ifThere(RecordJson::decision),
                at.at("claim").ifThere(JsonPlace::text),
                at.at("handling").ifThere(RecordJson::handling).orElse(Handling.UNKNOWN));
    }

    private static ObjectNode decision(Decision made) {
        return object().put("by", made.by()).put("reason", made.reason());
    }

    private static Decision decision(JsonPlace at) {
        return new Decision(at.at("by").text(), at.at("reason").text());
    }

    private static ObjectNode handling(Handling handling) {
        ObjectNode node = object();
        handling.product().ifPresent(product -> node.put("product", product));
        handling.cleanBy().ifPresent(person -> node.put("clean_by", person));
        handling.uncleaned().ifPresent(person -> node.set("uncleaned", decision(person)));
        return node;
    }

    private static Handling handling(JsonPlace at) {
        return new Handling(
                at.at("product").ifThere(JsonPlace::text),
                at.at("clean_by").ifThere(JsonPlace::text),
                at.at("uncleaned").ifThere(RecordJson::decision));
    }

    private static OffsetDateTime time(JsonPlace at) {
        try {
            return OffsetDateTime.parse(at.text());
        } catch (DateTimeException e) {
            throw new UnfitRecordException(
                    "%s is \"%s\", not a time with its UTC offset".formatted(at.way(), at.text()));
        }
    }

    private static ObjectNode subject(Subject subject) {
        return object().put("model", subject.model())
                .put("model_title", subject.modelTitle())
                .put("serial", subject.serial())
                .put("technician", subject.technician())
                .put("practice", subject.practice());
    }

    private static Subject subject(JsonPlace at) {
        return new Subject(
                at.at("model").text(),
                at.at("model_title").text(),
                at.at("serial").text(),
                at.at("technician").text(),
                at.at("practice").flag());
    }

    private static ObjectNode stand(StandUsed stand) {
        ObjectNode node = object().put("id", stand.id())
                .put("title", stand.title())
                .put("board", stand.board())
                .put("board_unique_id", stand.boardUniqueId())
                .put("firmware", stand.firmware());
        node.set("boot_id", integer(stand.bootId()));
        node.set("samples_lost", integer(stand.samplesLost()));
        return node;
    }

    private static StandUsed stand(JsonPlace at) {
        return new StandUsed(
                at.at("id").text(),
                at.at("title").text(),
                at.at("board").text(),
                at.at("board_unique_id").text(),
                at.at("firmware").text(),
                at.at("boot_id").integer(),
                at.at("samples_lost").integer());
    }

    private static ObjectNode conditions(Conditions conditions) {
        ObjectNode node = object().put("model", conditions.model()).put("driver", conditions.driver());
        node.set("pwm_hz", number(conditions.pwmHz()));
        return node.put("nozzle", conditions.nozzle()).put("fluid", conditions.fluid());
    }

    private static Conditions conditions(JsonPlace at) {
        return new Conditions(
                at.at("model").text(),
                at.at("driver").text(),
                at.at("pwm_hz").number(),
                at.at("nozzle").text(),
                at.at("fluid").text());
    }

    private static JsonNode curve(Optional<CurveUsed> used) {
        if (used.isEmpty()) {
            return NullNode.getInstance();
        }
        CurveUsed curve = used.get();
        ObjectNode node = object().put("label", curve.label()).put("units", curve.units());
        node.set("tolerance_factor", number(curve.toleranceFactor()));
        return node.put("coverage", curve.coverage()).put("simulated", curve.simulated());
    }

    private static CurveUsed curve(JsonPlace at) {
        return new CurveUsed(
                at.at("label").text(),
                at.at("units").smallInteger(),
                at.at("tolerance_factor").number(),
                at.at("coverage").text(),
                at.at("simulated").flag());
    }

    private static Ending ending(JsonPlace at) {
        return new Ending(
                at.at("kind").choice(Ending.Kind.class), at.at("reason").text());
    }
}
