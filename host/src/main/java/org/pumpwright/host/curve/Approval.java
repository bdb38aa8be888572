package org.pumpwright.host.curve;

import java.time.LocalDate;

/**
 * Who let a curve be used for verdicts. Thread-safe.
 *
 * @param by the person's name
 * @param on day of the approval
 */
public record Approval(String by, LocalDate on) {
    public Approval {
        if (by.isBlank()) {
            throw new IllegalArgumentException("a curve is approved by a named person, the name is blank");
        }
    }
}
