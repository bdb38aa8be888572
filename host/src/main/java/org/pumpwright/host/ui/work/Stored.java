package org.pumpwright.host.ui.work;

/** The one place where sentences of records, which are kept in English, become words of the window. Thread-safe. */
public final class Stored {
    private Stored() {}

    /** A sentence as a record keeps it. */
    public static Word sentence(String english) {
        return Word.asIs(english);
    }
}
