package org.pumpwright.host.grade;

import java.util.Optional;

/**
 * What a person has to know before a unit is touched: what it has pumped, and who has made sure that it was drained and rinsed.
 * Thread-safe.
 *
 * @param product what it has pumped, in a word or its name; empty when nobody has said
 * @param cleanBy who has made sure that it is clean; empty when nobody has
 * @param uncleaned who lets it on the stand all the same, and why; empty when nobody had to
 */
public record Handling(Optional<String> product, Optional<String> cleanBy, Optional<Decision> uncleaned) {
    /** Nobody has said anything. */
    public static final Handling UNKNOWN = new Handling(Optional.empty(), Optional.empty(), Optional.empty());

    public Handling {
        product = given(product);
        cleanBy = given(cleanBy);
        if (cleanBy.isPresent() && uncleaned.isPresent()) {
            throw new IllegalArgumentException("a unit is either clean or let on the stand uncleaned, not both");
        }
    }

    private static Optional<String> given(Optional<String> text) {
        return text.map(String::strip).filter(word -> !word.isEmpty());
    }

    /** The same without anybody's name. */
    public Handling nameless() {
        return new Handling(product, Optional.empty(), Optional.empty());
    }
}
