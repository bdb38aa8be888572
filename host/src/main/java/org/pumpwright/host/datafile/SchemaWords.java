package org.pumpwright.host.datafile;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

/** Says in words what a schema allows. Thread-safe. */
final class SchemaWords {
    private static final List<String> BRANCHES = List.of("then", "else");

    private SchemaWords() {}

    /** The schema of a key, also where only one branch of a condition knows it; missing when none does. */
    static JsonNode property(JsonNode schema, String key) {
        if (schema.path("properties").has(key)) {
            return schema.path("properties").path(key);
        }
        return BRANCHES.stream()
                .map(schema::path)
                .map(branch -> branch.path("properties").path(key))
                .filter(found -> !found.isMissingNode())
                .findFirst()
                .orElse(MissingNode.getInstance());
    }

    /** Every key that a schema names, in its order. */
    static Set<String> keys(JsonNode schema) {
        Set<String> keys = new LinkedHashSet<>(schema.path("properties").propertyNames());
        BRANCHES.forEach(
                branch -> keys.addAll(schema.path(branch).path("properties").propertyNames()));
        return keys;
    }

    /** What a value may be, with its unit, e.g. {@code 0.1 to 60 (s)}. */
    static String allowed(JsonNode schema) {
        if (schema.has("x-allowed")) {
            return schema.path("x-allowed").stringValue();
        }
        if (schema.has("enum")) {
            return choice(texts(schema.path("enum")));
        }
        return switch (type(schema)) {
            case "number" -> range(schema, "") + unit(schema);
            case "integer" -> range(schema, "whole numbers from ") + unit(schema);
            case "boolean" -> "true or false";
            case "string" -> "text of " + size(schema, "Length") + " characters";
            case "array" -> "a list of " + size(schema, "Items") + unit(schema);
            default ->
                (schema.path("maxProperties").asInt(0) == 1 ? "one of the keys " : "a group of the keys ")
                        + String.join(", ", keys(schema));
        };
    }

    /**
     * What sort of value stands there, where that is what is wrong.
     *
     * @param found the value as it is quoted from the file
     */
    static String kind(String found, JsonNode value, JsonNode schema) {
        boolean quotedText = value.isString() && found.startsWith("\"");
        boolean hasOneType = !type(schema).isEmpty();
        if (quotedText && hasOneType && !wantsText(schema)) {
            return " (text)";
        }
        return value.isNumber() && wantsText(schema) ? " (a number)" : "";
    }

    /** What to do where the sort of the value is wrong in a way that is easily put right. */
    static String remedy(JsonNode value, JsonNode schema) {
        boolean wantsNumber = type(schema).equals("number") || type(schema).equals("integer");
        if (value.isString() && wantsNumber && looksLikeNumber(value.stringValue())) {
            return "; write it as a plain number";
        }
        return (value.isNumber() || value.isBoolean()) && wantsText(schema) ? "; for text put it in quotes" : "";
    }

    static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(item -> texts.add(item.asString()));
        return texts;
    }

    private static String choice(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    private static String range(JsonNode schema, String kind) {
        return kind + schema.path("minimum").asString() + " to "
                + schema.path("maximum").asString();
    }

    private static String size(JsonNode schema, String what) {
        return schema.path("min" + what).asString() + " to "
                + schema.path("max" + what).asString();
    }

    private static String unit(JsonNode schema) {
        return schema.has("x-unit") ? " (" + schema.path("x-unit").stringValue() + ")" : "";
    }

    private static boolean wantsText(JsonNode schema) {
        return type(schema).equals("string") || schema.has("enum");
    }

    private static boolean looksLikeNumber(String text) {
        return text.strip().matches("[-+]?[0-9_,]*[.,]?[0-9_]+([eE][-+]?[0-9]+)?");
    }

    private static String type(JsonNode schema) {
        return schema.path("type").asString("");
    }
}
