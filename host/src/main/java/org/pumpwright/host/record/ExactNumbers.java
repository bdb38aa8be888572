package org.pumpwright.host.record;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Makes sure that canonical JSON (RFC 8785) changes no number: it writes minus zero as 0, so minus zero is written as a text, as
 * infinity is. Thread-safe.
 */
final class ExactNumbers {
    private static final String MINUS_ZERO = "-0.0";
    private static final long MINUS_ZERO_BITS = Double.doubleToRawLongBits(-0.0);

    private ExactNumbers() {}

    /** The same, changed in place. */
    static ObjectNode of(ObjectNode node) {
        for (String key : node.propertyNames().toArray(String[]::new)) {
            JsonNode value = node.get(key);
            if (isMinusZero(value)) {
                node.put(key, MINUS_ZERO);
            } else {
                within(value);
            }
        }
        return node;
    }

    private static void of(ArrayNode list) {
        for (int i = 0; i < list.size(); i++) {
            if (isMinusZero(list.get(i))) {
                list.set(i, MINUS_ZERO);
            } else {
                within(list.get(i));
            }
        }
    }

    private static void within(JsonNode value) {
        if (value instanceof ObjectNode object) {
            of(object);
        } else if (value instanceof ArrayNode list) {
            of(list);
        }
    }

    private static boolean isMinusZero(JsonNode value) {
        return value.isDouble() && Double.doubleToRawLongBits(value.doubleValue()) == MINUS_ZERO_BITS;
    }
}
