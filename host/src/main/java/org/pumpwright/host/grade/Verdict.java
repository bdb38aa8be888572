package org.pumpwright.host.grade;

/** What a run says of the unit. Thread-safe. */
public enum Verdict {
    /** Every judged feature lies inside its limits by more than its guard. */
    PASS("as good as a healthy unit"),
    /** A judged feature lies outside its limits by more than its guard. */
    FAIL("not as good as a healthy unit"),
    /** No feature fails, but one lies too close to its limit to tell. */
    INCONCLUSIVE("too close to the limit to tell"),
    /** The stand or the run was not fit to judge the unit. Says nothing about the unit. */
    INVALID("the run does not count; it says nothing about the unit"),
    /** There was nothing to judge. */
    NOT_TESTED("nothing was judged");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** The verdict in plain words. */
    public String words() {
        return words;
    }
}
