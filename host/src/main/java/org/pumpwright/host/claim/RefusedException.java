package org.pumpwright.host.claim;

/** An act that the desk's rules do not allow. The message says why, and what is allowed. Thread-safe. */
public final class RefusedException extends Exception {
    private static final long serialVersionUID = 1L;

    /** @param message why, and what is allowed */
    public RefusedException(String message) {
        super(message);
    }
}
