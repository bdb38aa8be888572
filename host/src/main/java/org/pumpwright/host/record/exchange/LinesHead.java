package org.pumpwright.host.record.exchange;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * First and last line of a file of entries. The first says what the file is and gives the open keys with which the lines between
 * are checked; the last says how many those are, so that a file that was cut off shows. Thread-safe.
 *
 * @param software that wrote it
 * @param withCustomers whether it says whose units they were
 * @param keys PEM texts by their names
 */
public record LinesHead(String software, boolean withCustomers, Map<String, String> keys) {
    /** Name and version of the format. */
    public static final String FORMAT = "pumpwright-ledger/1";

    private static final String FORMAT_NAME = "pumpwright-ledger/";
    private static final JsonMapper JSON = JsonMapper.builder().build();

    public LinesHead {
        keys = Map.copyOf(keys);
    }

    /** The first line. */
    public String text() {
        ObjectNode node = JSON.createObjectNode()
                .put("format", FORMAT)
                .put("software", software)
                .put("with_customers", withCustomers);
        ObjectNode list = node.putObject("keys");
        new TreeMap<>(keys).forEach(list::put);
        return JSON.writeValueAsString(node);
    }

    /** Whether a text begins such a file, of whatever version. */
    public static boolean begins(String text) {
        return text.startsWith("{\"format\":\"" + FORMAT_NAME);
    }

    /**
     * Reads a first line.
     *
     * @throws IllegalArgumentException when it is none, or of another version
     */
    public static LinesHead read(String line) {
        try {
            JsonNode node = JSON.readTree(line);
            String format = node.path("format").stringValue("");
            if (!format.equals(FORMAT)) {
                throw new IllegalArgumentException(
                        format.startsWith(FORMAT_NAME)
                                ? "it has format %s, this program reads %s; use a newer Pumpwright"
                                        .formatted(format, FORMAT)
                                : "it is no file of entries (format %s)".formatted(FORMAT));
            }
            Map<String, String> keys = new TreeMap<>();
            node.path("keys")
                    .properties()
                    .forEach(key -> keys.put(key.getKey(), key.getValue().stringValue("")));
            return new LinesHead(
                    node.path("software").stringValue(""),
                    node.path("with_customers").booleanValue(false),
                    keys);
        } catch (JacksonException e) {
            throw new IllegalArgumentException("it is no file of entries: " + e.getOriginalMessage(), e);
        }
    }

    /** The last line. */
    public static String end(long entries) {
        return JSON.writeValueAsString(JSON.createObjectNode().put("end_of_entries", entries));
    }

    /** How many entries the last line says there are; empty when it is no last line. */
    public static Optional<Long> ended(String line) {
        try {
            JsonNode count = JSON.readTree(line).path("end_of_entries");
            return count.isIntegralNumber() ? Optional.of(count.longValue()) : Optional.empty();
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }
}
