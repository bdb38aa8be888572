package org.pumpwright.host.claim;

import java.time.OffsetDateTime;

/**
 * An entry that corrects another. Both stay on record and both are shown. Thread-safe.
 *
 * @param corrected id of the entry that was corrected
 * @param by id of the entry that holds instead
 * @param reason why
 * @param at when
 * @param changes what was and what is, in words
 */
public record Correction(String corrected, String by, String reason, OffsetDateTime at, String changes) {}
