package org.pumpwright.host.record.ledger;

/** A store did not do what it was asked to. The message says what, why, and what to do. */
public final class StoreException extends Exception {
    private static final long serialVersionUID = 1;

    /** Why an entry could not be put on record. */
    public enum Reason {
        /** Its id is on record already. */
        ID_TAKEN,
        /** What it amends, or follows, is not on record. */
        NOTHING_TO_FOLLOW,
        /** The database failed: disk full, connection lost, damaged. */
        STORE_FAILED
    }

    private final Reason reason;

    /** A trouble without another behind it. */
    public StoreException(Reason reason, String message) {
        super(message);
        this.reason = reason;
    }

    /** A trouble that came of another. */
    public StoreException(Reason reason, String message, Throwable cause) {
        super(message, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
