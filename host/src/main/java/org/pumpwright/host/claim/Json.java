package org.pumpwright.host.claim;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pumpwright.host.record.ledger.CanonicalJson;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads and writes the few shapes that entries of claims are made of. What is empty is not written. Thread-safe. */
final class Json {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private Json() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static ObjectNode put(ObjectNode node, String key, String text) {
        if (!text.isEmpty()) {
            node.put(key, text);
        }
        return node;
    }

    static <T> ObjectNode put(ObjectNode node, String key, Optional<T> value, Function<T, String> words) {
        value.ifPresent(present -> node.put(key, words.apply(present)));
        return node;
    }

    static ObjectNode put(ObjectNode node, String key, List<String> texts) {
        if (!texts.isEmpty()) {
            ArrayNode list = node.putArray(key);
            texts.forEach(list::add);
        }
        return node;
    }

    static <T> void sourced(ObjectNode node, String key, Optional<Sourced<T>> value) {
        value.ifPresent(present -> node.putObject(key)
                .put("value", present.value().toString())
                .put("source", present.source().word()));
    }

    /** Canonical JSON. */
    static String text(ObjectNode node) {
        return new String(CanonicalJson.of(node.toString()), StandardCharsets.UTF_8);
    }

    /**
     * The object that a text holds.
     *
     * @throws IllegalArgumentException when it holds none
     */
    static JsonNode read(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JacksonException e) {
            throw new IllegalArgumentException("the content of an entry is no JSON: " + e.getMessage(), e);
        }
    }

    static String text(JsonNode node, String key) {
        return node.path(key).stringValue("");
    }

    static Optional<String> optional(JsonNode node, String key) {
        return node.path(key).stringValueOpt();
    }

    static OffsetDateTime time(JsonNode node, String key) {
        try {
            return OffsetDateTime.parse(text(node, key));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("'%s' of an entry is no time".formatted(key), e);
        }
    }

    static List<String> texts(JsonNode node, String key) {
        return node.path(key).valueStream().map(JsonNode::stringValue).toList();
    }

    static Optional<Sourced<LocalDate>> day(JsonNode node, String key) {
        return sourced(node.path(key), LocalDate::parse);
    }

    static Optional<Sourced<Double>> count(JsonNode node, String key) {
        return sourced(node.path(key), Double::valueOf);
    }

    private static <T> Optional<Sourced<T>> sourced(JsonNode node, Function<String, T> reader) {
        return node.isObject()
                ? Optional.of(new Sourced<>(reader.apply(text(node, "value")), Source.ofWord(text(node, "source"))))
                : Optional.empty();
    }
}
