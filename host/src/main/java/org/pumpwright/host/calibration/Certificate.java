package org.pumpwright.host.calibration;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What stands behind a calibration. Thread-safe.
 *
 * @param number of the calibration certificate, or words that say there is none
 * @param calibrated the day of the calibration; empty when there was none
 * @param due the last day on which the calibration may be used; empty when none was set. Needs {@code calibrated}
 */
public record Certificate(String number, Optional<LocalDate> calibrated, Optional<LocalDate> due) {
    /** How a certificate stands on a day. */
    public enum Standing {
        NOT_CALIBRATED,
        IN_DATE,
        PAST_DUE
    }

    public Certificate {
        if (due.isPresent() && calibrated.isEmpty()) {
            throw new IllegalArgumentException(
                    "certificate %s is due on %s but has no day of calibration".formatted(number, due.get()));
        }
        if (due.isPresent() && due.get().isBefore(calibrated.orElseThrow())) {
            throw new IllegalArgumentException("certificate %s is due on %s, before its calibration on %s"
                    .formatted(number, due.get(), calibrated.orElseThrow()));
        }
    }

    /** A number, or words, without days: not calibrated. */
    public static Certificate undated(String number) {
        return new Certificate(number, Optional.empty(), Optional.empty());
    }

    public Standing standing(LocalDate day) {
        if (calibrated.isEmpty()) {
            return Standing.NOT_CALIBRATED;
        }
        return due.filter(day::isAfter).isPresent() ? Standing.PAST_DUE : Standing.IN_DATE;
    }

    /** For a person, e.g. {@code certificate P-77 of 2026-01-10, due 2027-01-10}. */
    public String words(LocalDate day) {
        return switch (standing(day)) {
            case NOT_CALIBRATED -> "not calibrated (" + number + ")";
            case IN_DATE ->
                "certificate " + number + " of " + calibrated.orElseThrow()
                        + due.map(last -> ", due " + last).orElse(", no due date");
            case PAST_DUE -> "PAST DUE since " + due.orElseThrow() + " (certificate " + number + ")";
        };
    }
}
