package org.pumpwright.host.stand.conform;

/** The check can't be made here; the message says what is missing. */
final class NotPossible extends Exception {
    private static final long serialVersionUID = 1L;

    private final String missing;

    NotPossible(String missing) {
        super(missing);
        this.missing = missing;
    }

    String missing() {
        return missing;
    }
}
