package org.pumpwright.host.claim;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Puts in words what a correction changed. Thread-safe. */
final class Changes {
    private Changes() {}

    /** Every value that was and is now, as {@code place: before -> after}; people are only said to have changed. */
    static String between(@Nullable Act before, Act after) {
        List<String> changes = new ArrayList<>();
        if (before != null) {
            compare("", ActJson.content(before), ActJson.content(after), changes);
            if (before instanceof Act.Received was
                    && after instanceof Act.Received is
                    && !was.intake().people().equals(is.intake().people())) {
                changes.add("people changed");
            }
        }
        return String.join("; ", changes);
    }

    private static void compare(String place, JsonNode before, JsonNode after, List<String> changes) {
        if (before.isObject() || after.isObject()) {
            java.util.Set<String> keys = new java.util.TreeSet<>(before.propertyNames());
            keys.addAll(after.propertyNames());
            keys.forEach(key ->
                    compare(place.isEmpty() ? key : place + " " + key, before.path(key), after.path(key), changes));
        } else if (!before.equals(after)) {
            changes.add("%s: %s -> %s".formatted(place.replace('_', ' '), words(before), words(after)));
        }
    }

    private static String words(JsonNode value) {
        return value.isMissingNode() ? "nothing" : value.asString(value.toString());
    }
}
