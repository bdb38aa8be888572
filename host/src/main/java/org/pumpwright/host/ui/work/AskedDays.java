package org.pumpwright.host.ui.work;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/** From which day on is looked. Thread-safe. */
public enum AskedDays {
    EVER(0),
    TODAY(1),
    WEEK(7),
    SEASON(120);

    private final int days;

    AskedDays(int days) {
        this.days = days;
    }

    Optional<LocalDate> first(LocalDate today) {
        return this == EVER ? Optional.empty() : Optional.of(today.minusDays(days - 1L));
    }

    /** As keys of texts name it. */
    public String style() {
        return name().toLowerCase(Locale.ROOT);
    }

    AskedDays following() {
        return switch (this) {
            case EVER -> TODAY;
            case TODAY -> WEEK;
            case WEEK -> SEASON;
            case SEASON -> EVER;
        };
    }
}
