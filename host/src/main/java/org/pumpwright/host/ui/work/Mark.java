package org.pumpwright.host.ui.work;

import java.util.Locale;

/** How something stands. It is shown by a shape of its own, a colour and a word, never by the colour alone. Thread-safe. */
public enum Mark {
    /** In order: a disc with a tick. */
    GOOD,
    /** Usable, but somebody should look: a triangle. */
    WATCH,
    /** Not in order: a square with a cross. */
    BAD,
    /** Not known, or not looked at yet: a ring. */
    UNKNOWN;

    /** As the style sheet names it. */
    public String style() {
        return name().toLowerCase(Locale.ROOT);
    }
}
