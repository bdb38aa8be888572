package org.pumpwright.host.record.ledger;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Writes a flat JSON object of texts whose keys are given in canonical order (RFC 8785, 3.2.3): what comes out is canonical.
 * Confined to one thread.
 */
final class JsonText {
    private static final int FIRST_PRINTABLE = 0x20;

    private final StringBuilder json = new StringBuilder("{");

    JsonText text(String key, String value) {
        key(key).append(quoted(value)).append(',');
        return this;
    }

    JsonText text(String key, Optional<String> value) {
        value.ifPresent(present -> text(key, present));
        return this;
    }

    JsonText texts(String key, List<String> values) {
        key(key).append(values.stream().map(JsonText::quoted).collect(Collectors.joining(",", "[", "]")))
                .append(',');
        return this;
    }

    /** The object. */
    String end() {
        if (json.length() > 1) {
            json.setLength(json.length() - 1);
        }
        return json.append('}').toString();
    }

    private StringBuilder key(String key) {
        return json.append(quoted(key)).append(':');
    }

    private static String quoted(String value) {
        StringBuilder text = new StringBuilder("\"");
        value.chars().forEach(c -> append(text, (char) c));
        return text.append('"').toString();
    }

    /** Escapes as RFC 8785, 3.2.2.2 asks. */
    private static void append(StringBuilder text, char c) {
        switch (c) {
            case '"' -> text.append("\\\"");
            case '\\' -> text.append("\\\\");
            case '\b' -> text.append("\\b");
            case '\f' -> text.append("\\f");
            case '\n' -> text.append("\\n");
            case '\r' -> text.append("\\r");
            case '\t' -> text.append("\\t");
            default -> {
                if (c < FIRST_PRINTABLE) {
                    text.append("\\u00").append(Character.forDigit(c >> 4, 16)).append(Character.forDigit(c & 15, 16));
                } else {
                    text.append(c);
                }
            }
        }
    }
}
