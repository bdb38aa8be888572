package org.pumpwright.host.claim;

import java.util.List;

/**
 * A sentence that papers say in the reader's language: the key of a text and what goes into its gaps. Thread-safe.
 *
 * @param key of the text
 * @param values one for each gap, in order
 */
public record Sentence(String key, List<String> values) {
    public Sentence {
        values = List.copyOf(values);
    }

    /** A sentence with these values. */
    public static Sentence of(String key, Object... values) {
        return new Sentence(
                key, java.util.Arrays.stream(values).map(Object::toString).toList());
    }
}
