package org.pumpwright.host.claim;

import java.util.Locale;

/**
 * The neutral categories of a technician's finding. They say what was measured and seen, never whose doing it was. The text is
 * {@code claim.category.c1} and so on. Common practice, no source. Thread-safe.
 */
public enum Category {
    /** Outside limits; condition consistent with a material or workmanship cause. */
    C1(Evidence.FAIL),
    /** Outside limits; condition consistent with normal wear for reported use. */
    C2(Evidence.FAIL),
    /** Outside limits; condition consistent with installation, contamination or operation outside stated range. */
    C3(Evidence.FAIL),
    /** Within limits at every test performed; reported symptom not reproduced. */
    C4(Evidence.PASS),
    /** Measurement inconclusive at the stated uncertainty. */
    C5(Evidence.INCONCLUSIVE),
    /** Not testable as received. */
    C6(Evidence.REASON),
    /** Unit within limits; cause found elsewhere. */
    C7(Evidence.PASS),
    /** Outside limits; cause not determined. */
    C8(Evidence.FAIL);

    private final Evidence evidence;

    Category(Evidence evidence) {
        this.evidence = evidence;
    }

    /** What must be on record for a category to be signed. */
    public enum Evidence {
        /** A run that found the unit outside its limits. */
        FAIL,
        /** Runs that found it within its limits, and none that did not. */
        PASS,
        /** A run that could not tell, and none that found it outside. */
        INCONCLUSIVE,
        /** No run: the reason why the unit could not be tested. */
        REASON
    }

    /** What must be on record. */
    public Evidence evidence() {
        return evidence;
    }

    /** Key of the sentence that papers print. */
    public String key() {
        return "claim.category." + name().toLowerCase(Locale.ROOT);
    }

    /**
     * The category with this code.
     *
     * @throws IllegalArgumentException naming the codes that are known
     */
    public static Category ofWord(String word) {
        return Words.choice(Category.class, "category", word);
    }
}
