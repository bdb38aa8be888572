package org.pumpwright.host.report.label;

import java.util.Locale;
import org.pumpwright.host.grade.Verdict;

/** The colour of the tag a unit gets, which says where it goes next; common practice, no source. Thread-safe. */
public enum TagColour {
    /** Back to its owner. */
    GREEN,
    /** Held for a claim. */
    RED,
    /** To be tested again. */
    YELLOW,
    /** A repair that the owner pays for is offered. */
    BLUE,
    /** To the factory. */
    WHITE;

    /**
     * The colour that follows from a verdict alone, where nobody has decided anything else.
     *
     * @throws IllegalArgumentException for an invalid run: it says nothing of the unit, so the unit gets no tag by it
     */
    public static TagColour of(Verdict verdict) {
        return switch (verdict) {
            case PASS -> GREEN;
            case FAIL -> RED;
            case INCONCLUSIVE, NOT_TESTED -> YELLOW;
            case INVALID ->
                throw new IllegalArgumentException(
                        "an invalid run says nothing of the unit: it gets a stand ticket, no label");
        };
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
