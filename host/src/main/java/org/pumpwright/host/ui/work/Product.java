package org.pumpwright.host.ui.work;

import java.util.Locale;

/** What a unit has pumped, as far as hands and eyes are concerned. Common practice, no source. Thread-safe. */
public enum Product {
    /** Starter, nitrogen, thiosulfate: salts. */
    FERTILIZER,
    /** Anything put in the furrow against insects, fungi or weeds. */
    PESTICIDE,
    /** Only water since it was new or rebuilt. */
    WATER,
    /** Nobody knows: handled like the worst. */
    UNKNOWN;

    /** Its name. */
    public Word word() {
        return Word.of(key());
    }

    /** What to mind when it is handled. */
    public Word caution() {
        return Word.of(key() + ".caution");
    }

    private String key() {
        return "ui.product." + name().toLowerCase(Locale.ROOT);
    }
}
