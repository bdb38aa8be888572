package org.pumpwright.host.ui;

import java.util.Locale;

/** A moment of the work; each has a screen, in this order. Thread-safe. */
public enum Moment {
    /** A unit comes in. */
    RECEIVE(1),
    /** It is put on the stand. */
    READY(2),
    /** It is run. */
    RUN(3),
    /** What came out. */
    VERDICT(4),
    /** A flow meter is calibrated by the bucket. */
    BUCKET(5),
    /** Earlier runs. */
    HISTORY(6),
    /** The stand itself. */
    STAND(7),
    /** What goes to whoever answers for the unit. */
    CLAIM(8),
    /** Simulated units to learn on. */
    PRACTICE(9);

    private final int digit;

    Moment(int digit) {
        this.digit = digit;
    }

    /** Its name in the keys of the texts: {@code ui.stand.title}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The digit that goes to it, with Alt. */
    public int digit() {
        return digit;
    }
}
