package org.pumpwright.host.grade;

/**
 * Whether what was found explains what the customer says; apart from the verdict. Thread-safe.
 *
 * @param answer the answer
 * @param why in plain words
 */
public record ComplaintAnswer(Answer answer, String why) {
    /** No complaint was given, or an older record did not keep it. */
    public static final ComplaintAnswer NO_COMPLAINT =
            new ComplaintAnswer(Answer.NOT_ATTEMPTED, "no complaint was given");

    /** The answers there are. */
    public enum Answer {
        YES,
        PARTLY,
        NO,
        /** The run was not one that could tell. */
        NOT_ATTEMPTED
    }
}
