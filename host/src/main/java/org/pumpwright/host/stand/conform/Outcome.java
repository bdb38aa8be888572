package org.pumpwright.host.stand.conform;

/** How a check came out. Thread-safe. */
public enum Outcome {
    /** The board did what the protocol demands. */
    HELD("held"),
    /** It did not. */
    BROKEN("BROKEN"),
    /** Somebody or something would have to act that this script can't move. */
    NOT_POSSIBLE("not possible");

    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    /** The outcome in plain words. */
    public String words() {
        return words;
    }
}
