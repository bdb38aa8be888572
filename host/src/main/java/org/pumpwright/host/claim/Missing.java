package org.pumpwright.host.claim;

import java.util.Locale;

/**
 * What an intake or the evidence of a claim lacks. It is named on papers, never left out in silence. The text is
 * {@code claim.missing.WORD}. Common practice, no source. Thread-safe.
 */
public enum Missing {
    BROUGHT_BY(true),
    CONTACT(true),
    KIND(true),
    MODEL(true),
    SERIAL(true),
    COMPLAINT(true),
    COMPLAINT_CODE(true),
    PRODUCT(true),
    ACCESSORIES(true),
    SEAL(true),
    TAG(true),
    DECONTAMINATION_DECLARED(true),
    DECONTAMINATION_CONFIRMED(false),
    CUSTOMER(false),
    DATE_CODE(false),
    SALE_DATE(false),
    FIRST_USE(false),
    HOURS_OR_ACRES(false),
    PHOTO_PLATE(false),
    PHOTO_CONNECTOR(false),
    PHOTO_PORTS(false),
    PHOTO_WHOLE(false),
    RUN(false),
    TRACE(false),
    FINDING(false),
    DECISION(false);

    private final boolean beforeTheTest;

    Missing(boolean beforeTheTest) {
        this.beforeTheTest = beforeTheTest;
    }

    /** Whether a unit may not be graded while it is missing. */
    public boolean beforeTheTest() {
        return beforeTheTest;
    }

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Key of its text. */
    public String key() {
        return "claim.missing." + word();
    }
}
