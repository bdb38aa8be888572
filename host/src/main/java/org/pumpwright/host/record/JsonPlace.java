package org.pumpwright.host.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * A value in a record's JSON and the way to it, so that a complaint can say where. Every reading method throws
 * {@link UnfitRecordException} when the value is missing or of another kind. Thread-safe.
 */
record JsonPlace(String way, @Nullable JsonNode node) {
    static JsonPlace root(JsonNode node) {
        return new JsonPlace("", node);
    }

    /** The entry with this name, there or not. */
    JsonPlace at(String key) {
        return new JsonPlace(way.isEmpty() ? key : way + "." + key, node == null ? null : node.get(key));
    }

    String text() {
        return there(JsonNode::isString, "a text").stringValue();
    }

    boolean flag() {
        return there(JsonNode::isBoolean, "true or false").booleanValue();
    }

    long integer() {
        JsonNode value = there(n -> n.isString() || (n.isIntegralNumber() && n.canConvertToLong()), "an integer");
        return value.isString() ? parsed(value.stringValue(), Long::valueOf, "an integer") : value.longValue();
    }

    int smallInteger() {
        long value = integer();
        if (value != (int) value) {
            throw new UnfitRecordException("%s is %d, too large".formatted(way, value));
        }
        return (int) value;
    }

    double number() {
        JsonNode value = there(n -> n.isString() || n.isNumber(), "a number");
        return value.isString() ? parsed(value.stringValue(), Double::valueOf, "a number") : value.doubleValue();
    }

    <E extends Enum<E>> E choice(Class<E> type) {
        String word = text();
        for (E constant : type.getEnumConstants()) {
            if (RecordLayout.word(constant).equals(word)) {
                return constant;
            }
        }
        throw new UnfitRecordException("%s is \"%s\", which is not known here".formatted(way, word));
    }

    /** Empty where the entry is null. */
    <T> Optional<T> optional(Function<JsonPlace, T> read) {
        return node != null && node.isNull() ? Optional.empty() : Optional.of(read.apply(this));
    }

    /** Empty where there is no such entry. */
    <T> Optional<T> ifThere(Function<JsonPlace, T> read) {
        return node == null ? Optional.empty() : Optional.of(read.apply(this));
    }

    <T> List<T> list(Function<JsonPlace, T> read) {
        JsonNode array = there(JsonNode::isArray, "a list");
        List<T> values = new ArrayList<>(array.size());
        for (int i = 0; i < array.size(); i++) {
            values.add(read.apply(new JsonPlace(way + "[" + i + "]", array.get(i))));
        }
        return values;
    }

    /** An empty list where there is no such entry: in records from before it was kept. */
    <T> List<T> listOrNone(Function<JsonPlace, T> read) {
        return node == null ? List.of() : list(read);
    }

    private JsonNode there(Predicate<JsonNode> fits, String wanted) {
        if (node == null) {
            throw new UnfitRecordException(way + " is missing");
        }
        if (!fits.test(node)) {
            throw new UnfitRecordException(way + " is not " + wanted);
        }
        return node;
    }

    private <T> T parsed(String text, Function<String, T> parse, String wanted) {
        try {
            return parse.apply(text);
        } catch (NumberFormatException e) {
            throw new UnfitRecordException("%s is \"%s\", not %s".formatted(way, text, wanted));
        }
    }
}
