package org.pumpwright.host.claim.statistics;

/** What the evidence of a concluded claim says, as far as counting goes. Thread-safe. */
public enum Outcome {
    /** Outside its limits, whatever the cause: categories C1, C2, C3 and C8. */
    CONFIRMED_FAILURE,
    /** Within its limits at every test performed, or its cause found elsewhere: C4 and C7. A class to explain, no pass. */
    NO_FAULT_FOUND,
    /** The stand could not tell at its uncertainty: C5. */
    INCONCLUSIVE,
    /** Could not be tested as it came: C6. */
    NOT_TESTABLE;

    /**
     * The outcome a category counts as.
     *
     * @param code C1 to C8
     * @throws IllegalArgumentException for any other word
     */
    public static Outcome ofCategory(String code) {
        return switch (code) {
            case "C1", "C2", "C3", "C8" -> CONFIRMED_FAILURE;
            case "C4", "C7" -> NO_FAULT_FOUND;
            case "C5" -> INCONCLUSIVE;
            case "C6" -> NOT_TESTABLE;
            default -> throw new IllegalArgumentException("category '%s' is not known: C1 to C8".formatted(code));
        };
    }
}
