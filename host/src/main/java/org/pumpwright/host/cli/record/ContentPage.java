package org.pumpwright.host.cli.record;

import java.io.PrintWriter;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A content for people: a line for each fact, what belongs together indented. Thread-safe. */
final class ContentPage {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int LONGEST_LIST_ON_A_LINE = 100;

    private ContentPage() {}

    /**
     * Prints a content.
     *
     * @param whole whether what is deep inside is shown too
     */
    static void print(String content, boolean whole, PrintWriter out) {
        try {
            print(JSON.readTree(content), "  ", whole ? Integer.MAX_VALUE : 2, out);
        } catch (JacksonException e) {
            out.println("  (can't be read: " + e.getOriginalMessage() + ")");
        }
    }

    private static void print(JsonNode node, String indent, int depth, PrintWriter out) {
        for (Map.Entry<String, JsonNode> fact : node.properties()) {
            print(fact.getKey(), fact.getValue(), indent, depth, out);
        }
    }

    private static void print(String name, JsonNode value, String indent, int depth, PrintWriter out) {
        String words = name.replace('_', ' ');
        if (value.isNull() || (value.isContainer() && value.isEmpty())) {
            return;
        }
        if (!value.isContainer()) {
            out.println("%s%s: %s".formatted(indent, words, value.asString()));
        } else if (value.isArray() && isPlain(value)) {
            out.println("%s%s: %s".formatted(indent, words, line(value)));
        } else if (depth <= 1) {
            out.println("%s%s: (%d more; --all shows them)".formatted(indent, words, value.size()));
        } else if (value.isArray()) {
            out.println("%s%s:".formatted(indent, words));
            for (JsonNode each : value) {
                out.println(indent + "-");
                print(each, indent + "  ", depth - 1, out);
            }
        } else {
            out.println("%s%s:".formatted(indent, words));
            print(value, indent + "  ", depth - 1, out);
        }
    }

    private static boolean isPlain(JsonNode list) {
        for (JsonNode each : list) {
            if (each.isContainer()) {
                return false;
            }
        }
        return list.size() <= LONGEST_LIST_ON_A_LINE;
    }

    private static String line(JsonNode list) {
        StringBuilder line = new StringBuilder();
        list.forEach(each -> line.append(line.isEmpty() ? "" : "; ").append(each.asString()));
        return line.toString();
    }
}
