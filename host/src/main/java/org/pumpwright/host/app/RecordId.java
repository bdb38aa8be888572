package org.pumpwright.host.app;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** Ids of records: the time in UTC, so that they sort by it. Thread-safe. */
final class RecordId {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss.SSS'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private RecordId() {}

    /** The id of a run that begins now. */
    static String of(OffsetDateTime startedAt) {
        return TIME.format(startedAt);
    }

    /** The id of the record that judges a run again; it sorts behind the run's own. */
    static String again(String run, Instant now) {
        return run + "-again-" + TIME.format(now);
    }

    /** When the run with this id began; empty when the id is not of this form. */
    static Optional<Instant> beginning(String id) {
        try {
            return Optional.of(Instant.from(TIME.parse(id)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
