package org.pumpwright.host.plant;

import java.util.Locale;

/** Range checks of the parameter records, with messages that name the value, the limits and the unit. Thread-safe. */
public final class Range {

    private Range() {}

    /** Accepts {@code least <= value <= most}; not-a-number never passes. A bare ratio has an empty unit. */
    public static void check(String what, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            String tail = unit.isEmpty() ? "" : " " + unit;
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "%s %.6g%s is outside %.6g to %.6g%s", what, value, tail, least, most, tail));
        }
    }
}
