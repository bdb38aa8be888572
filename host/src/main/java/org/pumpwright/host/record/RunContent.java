package org.pumpwright.host.record;

import java.nio.charset.StandardCharsets;
import org.pumpwright.host.record.ledger.CanonicalJson;
import org.pumpwright.host.trace.Trace;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * A run as the content of an entry: everything but its trace, in the keys of the run's own file, as canonical JSON. The trace is
 * a {@link TraceBlob} beside it. Both together are the run to the last bit, so that it can be graded again. Thread-safe.
 */
public final class RunContent {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private RunContent() {}

    /** The content of a run. */
    public static String of(RunRecord run) {
        String json = JSON.writeValueAsString(ExactNumbers.of(RecordJson.writeAllButTheTrace(run)));
        return new String(CanonicalJson.of(json), StandardCharsets.UTF_8);
    }

    /**
     * The run again.
     *
     * @param blob its trace
     * @throws IllegalArgumentException when either is damaged, or of a version that is not read here; the message says what to
     *     do
     */
    public static RunRecord read(String content, byte[] blob) {
        return read(content, TraceBlob.read(blob));
    }

    /** Who tested, by a run's content; empty where it is no content of a run, which is for whoever audits it. */
    public static String technician(String content) {
        try {
            return JSON.readTree(content)
                    .path("subject")
                    .path("technician")
                    .stringValue("")
                    .strip();
        } catch (JacksonException e) {
            return "";
        }
    }

    /** The same with a trace that is known already. */
    public static RunRecord read(String content, Trace trace) {
        try {
            JsonPlace root = JsonPlace.root(JSON.readTree(content));
            String format = root.at("format").text();
            if (!RunRecordFile.isRead(format)) {
                throw new UnfitRecordException(
                        "it has format %s, this program reads %s".formatted(format, RunRecordFile.READS));
            }
            return RecordJson.read(root, trace);
        } catch (JacksonException | UnfitRecordException e) {
            throw new IllegalArgumentException(
                    "the content is no run that can be read here: %s. Use the version of Pumpwright that wrote it, or a newer one."
                            .formatted(e.getMessage()),
                    e);
        }
    }
}
