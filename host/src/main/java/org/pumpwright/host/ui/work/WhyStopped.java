package org.pumpwright.host.ui.work;

import java.util.Locale;

/** Why somebody stopped a run. Thread-safe. */
public enum WhyStopped {
    LEAK("something leaked or sprayed"),
    NOISE("it sounded, smelled or felt wrong"),
    HOOK_UP("something was not connected right"),
    MIND("it was the wrong unit or the wrong plan"),
    OTHER("another reason");

    private final String words;

    WhyStopped(String words) {
        this.words = words;
    }

    /** As the record keeps it. */
    String words() {
        return words;
    }

    /** As the button says it. */
    public Word word() {
        return Word.of("ui.run.why." + name().toLowerCase(Locale.ROOT));
    }
}
