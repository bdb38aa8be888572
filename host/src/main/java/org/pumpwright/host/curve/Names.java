package org.pumpwright.host.curve;

import java.text.Normalizer;
import java.util.Locale;

/** Names of people. Thread-safe. */
public final class Names {
    private Names() {}

    /** Whether two names are one person's, however they are spaced and capitalised. */
    public static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC)
                .strip()
                .replaceAll("\\s+", " ")
                .toLowerCase(Locale.ROOT);
    }
}
