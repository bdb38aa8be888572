package org.pumpwright.host.claim;

/**
 * What the customer says. Empty texts are what nobody has told yet. Thread-safe.
 *
 * @param words in the customer's own words
 * @param code the same as a code word, such as {@code quits-hot}; it picks the plan
 * @param conditions when it happens: cold start, after so many minutes, at the end rows
 * @param alreadySwapped what was already exchanged for a good one
 */
public record ComplaintAsMade(String words, String code, String conditions, String alreadySwapped) {
    public ComplaintAsMade {
        words = Words.bounded("complaint", words);
        code = Words.bounded("complaint code", code);
        conditions = Words.bounded("conditions", conditions);
        alreadySwapped = Words.bounded("already swapped", alreadySwapped);
    }
}
