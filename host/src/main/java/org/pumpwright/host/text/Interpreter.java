package org.pumpwright.host.text;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;

/**
 * Speaks for one page in one language: the page's own words by their key, and the sentences of a record, which are kept in
 * English. What it cannot put into the language it leaves in English and remembers, so that the page can tell. Thread-safe.
 */
public final class Interpreter {
    private final Texts texts;
    private final SortedSet<String> leftInEnglish = new ConcurrentSkipListSet<>();

    /** For one page with these texts. */
    public Interpreter(Texts texts) {
        this.texts = texts;
    }

    /** For one page in English. */
    public static Interpreter english() {
        return new Interpreter(Texts.in(Language.EN));
    }

    /** The language it speaks. */
    public Language language() {
        return texts.language();
    }

    /** The page's own text with this key; see {@link Texts#say}. */
    public String say(String key, Object... values) {
        return texts.say(key, values);
    }

    /** A sentence of a record in the page's language, or as it is where that has no words for it. */
    public String stored(String english) {
        Optional<String> said = texts.translate(english);
        if (said.isEmpty()) {
            leftInEnglish.add(english);
        }
        return said.orElse(english);
    }

    /** What a person typed: in the page's language where it happens to be a sentence of the program, else as it is. */
    public String typed(String text) {
        return texts.translate(text).orElse(text);
    }

    /** What was asked for so far and left in English, in alphabetical order. */
    public SortedSet<String> leftInEnglish() {
        return Collections.unmodifiableSortedSet(new TreeSet<>(leftInEnglish));
    }
}
