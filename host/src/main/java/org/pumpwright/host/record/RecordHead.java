package org.pumpwright.host.record;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalInt;
import org.pumpwright.host.grade.Verdict;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * What stands in a record before its trace, found without reading the trace, which is nearly all of the file. The seal is
 * not checked: whoever uses more of a record than this reads it whole. Thread-safe.
 *
 * @param id of the record
 * @param startedAt when the run began
 * @param model id of the unit's model
 * @param serial as read from the plate
 * @param practice whether the unit was simulated or invented
 * @param plan id and version
 * @param verdict on the unit
 * @param attempt which run of the unit it was, counted from 1; empty in records from before it was kept
 * @param regradedFrom id of the record that this one judges again; empty for a run's own record
 */
public record RecordHead(
        String id,
        OffsetDateTime startedAt,
        String model,
        String serial,
        boolean practice,
        String plan,
        Verdict verdict,
        OptionalInt attempt,
        Optional<String> regradedFrom) {
    /** Each value is read by itself out of the middle of the file. */
    private static final JsonMapper JSON = JsonMapper.builder()
            .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** The head of the record in a file; empty when it can't be read, or is no record. */
    public static Optional<RecordHead> of(Path file) {
        try (InputStream bytes = Files.newInputStream(file);
                JsonParser parser = JSON.createParser(bytes)) {
            return Optional.of(head(JsonPlace.root(beforeTheTrace(parser))));
        } catch (IOException | JacksonException | UnfitRecordException | DateTimeException e) {
            return Optional.empty();
        }
    }

    private static ObjectNode beforeTheTrace(JsonParser parser) {
        ObjectNode found = JSON.createObjectNode();
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            return found;
        }
        while (parser.nextToken() == JsonToken.PROPERTY_NAME
                && !parser.currentName().equals("trace")) {
            String name = parser.currentName();
            parser.nextToken();
            found.set(name, JSON.readTree(parser));
        }
        return found;
    }

    private static RecordHead head(JsonPlace root) {
        JsonPlace subject = root.at("subject");
        return new RecordHead(
                root.at("id").text(),
                OffsetDateTime.parse(root.at("started_at").text()),
                subject.at("model").text(),
                subject.at("serial").text(),
                subject.at("practice").flag(),
                root.at("plan").text(),
                root.at("grade").at("verdict").choice(Verdict.class),
                root.at("intake")
                        .at("attempt")
                        .ifThere(at -> OptionalInt.of(at.smallInteger()))
                        .orElse(OptionalInt.empty()),
                root.at("regraded_from")
                        .ifThere(at -> at.optional(JsonPlace::text))
                        .orElse(Optional.empty()));
    }
}
