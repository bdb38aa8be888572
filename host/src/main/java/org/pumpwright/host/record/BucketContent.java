package org.pumpwright.host.record;

import java.nio.charset.StandardCharsets;
import org.pumpwright.host.record.ledger.CanonicalJson;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A bucket test as the content of an entry: its figures in the keys of its own file, as canonical JSON, without whose meter it
 * is and without the sheet as it was typed. Those stand in the whole file, which is kept beside the entry, so that the figures
 * can be handed on without them. Thread-safe.
 */
public final class BucketContent {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private BucketContent() {}

    /** The content of a bucket test. */
    public static String of(BucketRecord record) {
        ObjectNode node = BucketRecordJson.write(record);
        if (node.get("job") instanceof ObjectNode job) {
            job.remove("customer");
        }
        if (node.get("source") instanceof ObjectNode source) {
            source.remove("name");
            source.remove("text");
        }
        return new String(CanonicalJson.of(JSON.writeValueAsString(node)), StandardCharsets.UTF_8);
    }
}
