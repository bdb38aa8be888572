package org.pumpwright.host.grade.finding;

import java.util.Locale;
import org.pumpwright.host.quantity.Duty;

/** Figures in the notes of findings. Thread-safe. */
final class Figures {
    private Figures() {}

    /** Formats with a decimal point, whatever the machine's language. */
    static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /** A share of one as a duty for people. */
    static String duty(double share) {
        return Duty.ofPercent(Math.max(0, Math.min(100, share * 100))).print();
    }

    /** Adds which time of several this is. */
    static String time(String name, int time, int of) {
        return of == 1 ? name : format("%s, time %d of %d", name, time, of);
    }
}
