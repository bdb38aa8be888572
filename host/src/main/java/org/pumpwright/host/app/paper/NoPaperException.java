package org.pumpwright.host.app.paper;

import java.util.Locale;

/** There is no such paper of what was found. Thread-safe. */
public final class NoPaperException extends Exception {
    private static final long serialVersionUID = 1L;

    private final Reason reason;

    /** Why there is none. */
    public enum Reason {
        /** The run is INVALID and says nothing of the unit. */
        INVALID_RUN,
        /** The run was made for no claim. */
        NO_CLAIM,
        /** Its claim is not on record here. */
        CLAIM_NOT_ON_RECORD,
        /** The record was changed after it was signed. */
        CHANGED,
        /** What is kept beside the record is missing. */
        MISSING,
        /** The paper was made and can't be written. */
        NOT_WRITTEN;

        /** As keys of texts name it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * @param reason why there is none
     * @param detail of what: a run, a claim, a file
     */
    public NoPaperException(Reason reason, String detail) {
        super(detail);
        this.reason = reason;
    }

    /** Why there is none. */
    public Reason reason() {
        return reason;
    }
}
