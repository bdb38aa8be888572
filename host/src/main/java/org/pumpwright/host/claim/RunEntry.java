package org.pumpwright.host.claim;

import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import tools.jackson.databind.JsonNode;

/** Reads what a claim needs of a run's entry. Thread-safe. */
public final class RunEntry {
    private RunEntry() {}

    /** Whether an entry is of a run, or of a run that was graded again. */
    public static boolean is(Entry entry) {
        return entry.kind() == EntryKind.RUN || entry.kind() == EntryKind.GRADE;
    }

    /**
     * The run.
     *
     * @throws IllegalArgumentException when the entry holds none
     */
    public static ClaimRun read(Entry entry) {
        JsonNode json = Json.read(entry.content());
        JsonNode subject = json.path("subject");
        return new ClaimRun(
                entry.id(),
                Json.text(json, "id"),
                Json.time(json, "started_at"),
                Json.text(subject, "model"),
                Json.text(subject, "serial"),
                Json.text(subject, "technician"),
                Json.text(json, "plan"),
                Verdict.valueOf(Json.text(json.path("grade"), "verdict")
                        .toUpperCase(Locale.ROOT)
                        .replace('-', '_')),
                Json.optional(json.path("curve"), "label"),
                Json.optional(json, "rules"),
                entry.attachments().isEmpty()
                        ? Optional.empty()
                        : Optional.of(entry.attachments().get(0)),
                Json.optional(json, "regraded_from"),
                subject.path("practice").booleanValue(false));
    }
}
