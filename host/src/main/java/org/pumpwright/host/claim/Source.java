package org.pumpwright.host.claim;

/** Who says so: what a date or a count of hours rests on. Thread-safe. */
public enum Source {
    /** An invoice, a delivery note, a counter that was read. */
    DOCUMENT,
    /** The customer says so. */
    CUSTOMER,
    /** Nobody knows where it comes from. */
    UNKNOWN;

    /** The word in files and on the command line; the text's key is {@code claim.source.WORD}. */
    public String word() {
        return Words.of(this);
    }

    /**
     * The source with this word.
     *
     * @throws IllegalArgumentException naming the words that are known
     */
    public static Source ofWord(String word) {
        return Words.choice(Source.class, "source", word);
    }
}
