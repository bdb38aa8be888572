package org.pumpwright.host.app;

import java.time.Instant;
import java.util.Optional;

/** What ids of records say. Thread-safe. */
public final class RecordNames {
    private static final String AGAIN = "-again-";

    private RecordNames() {}

    /** When the run was judged again whose record has this id; empty for the record of a run's own. */
    public static Optional<Instant> gradedAgain(String id) {
        int at = id.lastIndexOf(AGAIN);
        return at < 0 ? Optional.empty() : RecordId.beginning(id.substring(at + AGAIN.length()));
    }

    /** Whether units are told apart by this serial number: one that says there is none does not. */
    public static boolean isSerial(String serial) {
        return EarlierRuns.isSerial(serial);
    }
}
