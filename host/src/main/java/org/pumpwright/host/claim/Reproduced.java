package org.pumpwright.host.claim;

/** Whether the stand has shown what the customer complains of. The text's key is {@code claim.reproduced.WORD}. Thread-safe. */
public enum Reproduced {
    YES,
    NO,
    PARTLY,
    NOT_ATTEMPTED;

    /** The word in files and on the command line. */
    public String word() {
        return Words.of(this);
    }

    /** Key of its text. */
    public String key() {
        return "claim.reproduced." + word();
    }

    /**
     * The answer with this word.
     *
     * @throws IllegalArgumentException naming the words that are known
     */
    public static Reproduced ofWord(String word) {
        return Words.choice(Reproduced.class, "answer", word);
    }
}
