package org.pumpwright.host.record.exchange;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pumpwright.host.record.ledger.Entry;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Runs as a table, one line each, without whose units they were. Thread-safe. */
public final class RunTable {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final List<String> HEADS = List.of(
            "id",
            "started_at",
            "kind",
            "model",
            "serial",
            "practice",
            "claim",
            "complaint",
            "plan",
            "stand",
            "technician",
            "verdict",
            "advisory",
            "attempt",
            "curve",
            "rules",
            "first_reason",
            "causes",
            "regraded_from",
            "software",
            "sha256");

    private RunTable() {}

    /** The names of the columns. */
    public static String heads() {
        return Csv.line(HEADS);
    }

    /** The line of a run, or of one that was graded again. */
    public static String line(Entry entry) {
        JsonNode run = JSON.readTree(entry.content());
        JsonNode grade = run.path("grade");
        return Csv.line(List.of(
                entry.id(),
                text(run.path("started_at")),
                entry.kind().word(),
                text(run.path("subject").path("model")),
                text(run.path("subject").path("serial")),
                text(run.path("subject").path("practice")),
                text(run.path("intake").path("claim")),
                text(run.path("intake").path("complaint")),
                text(run.path("plan")),
                text(run.path("stand").path("id")),
                text(run.path("subject").path("technician")),
                text(grade.path("verdict")),
                text(grade.path("advisory")),
                text(grade.path("attempt")),
                text(run.path("curve").path("label")),
                text(run.path("rules")),
                text(grade.path("reasons").path(0)),
                grade.path("causes")
                        .valueStream()
                        .map(cause -> text(cause.path("name")))
                        .collect(Collectors.joining("; ")),
                text(run.path("regraded_from")),
                text(run.path("software")),
                entry.digest().hex()));
    }

    private static String text(JsonNode value) {
        return Csv.safe(Optional.of(value)
                .filter(there -> !there.isNull() && !there.isMissingNode())
                .map(JsonNode::asString)
                .orElse(""));
    }
}
