package org.pumpwright.host.record;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** How values look in the file: one line an entry, lists on one line, exact numbers. Thread-safe. */
final class RecordLayout {
    /** Integers up to here are exact in every JSON reader (RFC 8259, section 6). */
    static final long LARGEST_EXACT = 1L << 53;

    static final PrettyPrinter PRINTER = new DefaultPrettyPrinter(Separators.createDefaultInstance()
                    .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                    .withArrayElementSpacing(Separators.Spacing.NONE)
                    .withArrayEmptySeparator("")
                    .withObjectEmptySeparator(""))
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultPrettyPrinter.NopIndenter());

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private RecordLayout() {}

    static ObjectNode object() {
        return NODES.objectNode();
    }

    /** An integer, as a string where a JSON number would not be exact everywhere. */
    static JsonNode integer(long value) {
        boolean exact = value >= -LARGEST_EXACT && value <= LARGEST_EXACT;
        return exact ? NODES.numberNode(value) : NODES.stringNode(Long.toString(value));
    }

    /** A number that reads back to the bit; infinity and not-a-number are strings. */
    static JsonNode number(double value) {
        return Double.isFinite(value) ? NODES.numberNode(value) : NODES.stringNode(Double.toString(value));
    }

    /** A list of anything. */
    static <T> ArrayNode list(List<T> values, Function<T, ? extends JsonNode> write) {
        ArrayNode array = NODES.arrayNode(values.size());
        values.forEach(value -> array.add(write.apply(value)));
        return array;
    }

    static ArrayNode texts(List<String> values) {
        return list(values, NODES::stringNode);
    }

    /** A choice as a lower-case word, e.g. {@code unit-out-of-bounds}. */
    static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
