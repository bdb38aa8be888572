package org.pumpwright.host.record.ledger;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What is to be put on record. Thread-safe.
 *
 * @param kind what it is about
 * @param id unlike that of any other entry of any shop
 * @param at when it happened, with the shop's UTC offset
 * @param content the facts, as JSON
 * @param finder by what it will be looked for
 * @param attachments what belongs to it and is kept beside it, such as a trace
 * @param amends the entry that this one corrects; the corrected one stays as it is
 */
public record Draft(
        EntryKind kind,
        String id,
        OffsetDateTime at,
        String content,
        Finder finder,
        List<byte[]> attachments,
        Optional<Amendment> amends) {
    private static final int LONGEST_ID = 100;

    public Draft {
        attachments = List.copyOf(attachments);
        if (id.isBlank() || id.length() > LONGEST_ID) {
            throw new IllegalArgumentException(
                    "the id of an entry is '%s', it must have 1 to %d characters".formatted(id, LONGEST_ID));
        }
    }

    /** A draft that amends nothing and has nothing beside it. */
    public Draft(EntryKind kind, String id, OffsetDateTime at, String content, Finder finder) {
        this(kind, id, at, content, finder, List.of(), Optional.empty());
    }

    /**
     * What an entry corrects, and why.
     *
     * @param id of the corrected entry
     * @param reason in the words of the person who corrects
     */
    public record Amendment(String id, String reason) {
        public Amendment {
            if (reason.isBlank()) {
                throw new IllegalArgumentException("the amendment of %s gives no reason".formatted(id));
            }
        }
    }
}
