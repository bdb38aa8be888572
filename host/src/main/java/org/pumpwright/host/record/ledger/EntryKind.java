package org.pumpwright.host.record.ledger;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What an entry is about. Thread-safe. */
public enum EntryKind {
    /** A unit came in. */
    INTAKE,
    /** A unit or a claim went from one hand or state to the next. */
    CUSTODY,
    /** A picture, by its digest. */
    PHOTO,
    /** Something was seen on a unit, or a step of a claim was gone past. */
    OBSERVATION,
    /** A test was run and graded. */
    RUN,
    /** A run on record was graded again. */
    GRADE,
    /** A technician signed what was found. */
    FINDING,
    /** A meter was calibrated. */
    BUCKET_TEST,
    /** A healthy curve was made or approved. */
    CURVE,
    /** A stand was described or changed. */
    STAND,
    /** Somebody decided. */
    DECISION;

    /** The word in files and tables: small letters with dashes. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The kind with this word. */
    public static Optional<EntryKind> ofWord(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }
}
