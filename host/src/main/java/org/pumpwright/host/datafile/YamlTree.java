package org.pumpwright.host.datafile;

import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Turns the text of a file into values and their places. What YAML readers are known to change without a word is not
 * changed here: {@code NO}, {@code 012}, {@code 1_000} and {@code .inf} stay the text that was written, so the schema
 * refuses them where a number or a flag belongs. Anchors, tags, doubled keys and second documents are refused.
 * Confined to the reading thread.
 */
final class YamlTree {
    private static final int DEEPEST = 20;
    private static final int LONGEST_QUOTE = 40;
    private static final Pattern BREAK = Pattern.compile("\\s*\\R\\s*");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]*)?([eE][-+]?[0-9]+)?");
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final YAMLFactory YAML = YAMLFactory.builder()
            .streamReadConstraints(
                    StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
            .build();

    private final Document document;
    private final YAMLParser parser;

    private YamlTree(Document document, YAMLParser parser) {
        this.document = document;
        this.parser = parser;
    }

    /** Reads the text into the document; what is wrong is noted there. */
    static void read(String text, Document document) {
        try (YAMLParser parser = (YAMLParser) YAML.createParser(ObjectReadContext.empty(), text)) {
            new YamlTree(document, parser).readAll();
        } catch (JacksonException e) {
            SyntaxProblem.note(document, e);
        }
    }

    private void readAll() {
        if (parser.nextToken() == null) {
            document.refuse("", "is empty");
            return;
        }
        document.root(value("", here()));
        if (parser.nextToken() != null) {
            document.refuse(place(here(), ""), "", "has a second document from here on, only one is allowed");
        }
    }

    private JsonNode value(String path, TokenStreamLocation at) {
        if (parser.isCurrentAlias()) {
            return refused(path, at, "*", "is a reference to another value, which is not allowed here: write it out");
        }
        if (parser.getTypeId() != null) {
            return refused(path, at, "!", "has a type tag, which is not allowed here: leave it out");
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(path, at);
            case START_ARRAY -> array(path, at);
            default -> scalar(path, at);
        };
    }

    private JsonNode object(String path, TokenStreamLocation at) {
        document.place(path, place(at, "a group of keys"));
        ObjectNode object = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            String childPath = Document.child(path, key);
            TokenStreamLocation keyAt = here();
            parser.nextToken();
            boolean doubled = object.has(key);
            JsonNode child = value(childPath, keyAt);
            if (doubled) {
                String says = "is given a second time, the first is in line "
                        + document.place(childPath).line();
                document.refuse(place(keyAt, ""), childPath, says);
            } else {
                object.set(key, child);
            }
        }
        return object;
    }

    private JsonNode array(String path, TokenStreamLocation at) {
        ArrayNode array = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(Document.child(path, array.size()), here()));
        }
        document.place(path, place(at, "a list of " + array.size()));
        return array;
    }

    private JsonNode scalar(String path, TokenStreamLocation at) {
        String text = parser.getString();
        JsonToken token = parser.currentToken();
        boolean number = token.isNumeric() && finite(text);
        document.place(path, place(at, token == JsonToken.VALUE_STRING ? quoted(text) : shortened(text)));
        if (number && token == JsonToken.VALUE_NUMBER_INT) {
            return NODES.numberNode(parser.getBigIntegerValue());
        }
        return switch (token) {
            case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(parser.getBooleanValue());
            case VALUE_NULL -> NODES.nullNode();
            default -> number ? NODES.numberNode(Double.parseDouble(text)) : NODES.stringNode(text);
        };
    }

    private static boolean finite(String text) {
        return NUMBER.matcher(text).matches() && Double.isFinite(Double.parseDouble(text));
    }

    private JsonNode refused(String path, TokenStreamLocation at, String sign, String says) {
        document.place(path, place(at, sign));
        document.refuse(path, says);
        parser.skipChildren();
        return NODES.nullNode();
    }

    private TokenStreamLocation here() {
        return parser.currentTokenLocation();
    }

    private static Place place(TokenStreamLocation at, String found) {
        return new Place(at.getLineNr(), at.getColumnNr(), found);
    }

    private static String quoted(String text) {
        return text.isEmpty() ? "empty" : '"' + shortened(text) + '"';
    }

    private static String shortened(String text) {
        String line = BREAK.matcher(text.strip()).replaceAll(" ");
        return line.length() <= LONGEST_QUOTE ? line : line.substring(0, LONGEST_QUOTE) + "...";
    }
}
