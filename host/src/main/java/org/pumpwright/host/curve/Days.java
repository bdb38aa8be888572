package org.pumpwright.host.curve;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.pumpwright.host.datafile.Node;

/** Days in files. Thread-safe. */
final class Days {
    private Days() {}

    /** The day; one that is in no calendar is refused, and the first of all days stands for it. */
    static LocalDate of(Node day) {
        try {
            return LocalDate.parse(day.text());
        } catch (DateTimeParseException e) {
            day.refuse("is " + day.found() + ", which is no day of the calendar");
            return LocalDate.MIN;
        }
    }
}
