package org.pumpwright.host.datafile;

import java.util.Collection;
import java.util.Comparator;

/** Guesses which key was meant by one that is not known. Thread-safe. */
final class NearestKey {
    /** One slip for this many letters is still taken as the same word; two letters may always change places. */
    private static final int LETTERS_PER_SLIP = 3;

    private NearestKey() {}

    /** What to add to "is not known here". */
    static String hint(String key, Collection<String> known) {
        return known.stream()
                .filter(candidate -> candidate.startsWith(key) || isSlip(key, candidate))
                .min(Comparator.comparingInt(candidate -> slips(key, candidate)))
                .map(candidate -> "; did you mean " + candidate + "?")
                .orElseGet(() -> "; known are " + String.join(", ", known));
    }

    private static boolean isSlip(String key, String candidate) {
        int allowed = Math.max(Math.min(2, key.length() / 2), key.length() / LETTERS_PER_SLIP);
        return slips(key, candidate) <= allowed;
    }

    /** The fewest letters to add, drop or change to make one word of the other (the distance of Levenshtein, 1965). */
    static int slips(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
