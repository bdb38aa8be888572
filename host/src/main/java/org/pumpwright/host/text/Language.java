package org.pumpwright.host.text;

import java.util.Locale;

/** A language of papers and screens. Thread-safe. */
public enum Language {
    /** English. */
    EN,
    /** Spanish. */
    ES;

    /** Its code, ISO 639-1, small letters. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
