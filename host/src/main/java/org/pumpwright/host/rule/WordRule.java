package org.pumpwright.host.rule;

/**
 * What it means when a reading is a word in the place of a figure. Thread-safe.
 *
 * @param reading which readings
 * @param word the word, e.g. {@code no start}, or {@code *} for any that no rule before it names
 * @param meaning what follows
 * @param says one plain sentence
 * @param source where the rule stands
 */
public record WordRule(ReadingName reading, String word, Meaning meaning, String says, Source source) {
    private static final String ANY = "*";

    /** Whether the rule speaks of this word. */
    public boolean speaksOf(String said) {
        return word.equals(ANY) || word.equals(said);
    }

    /** What follows from a word. */
    public enum Meaning {
        /** The unit passes by it. */
        PASS,
        /** The unit fails. */
        FAIL,
        /** It tells of the stand or the connection: the run is invalid. */
        STAND,
        /** It cannot pass. */
        INCONCLUSIVE,
        /** Nothing. */
        INFORMATION
    }
}
