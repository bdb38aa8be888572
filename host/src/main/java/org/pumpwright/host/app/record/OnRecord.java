package org.pumpwright.host.app.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.record.ledger.CheckingKey;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * An entry with all that belongs to it. Thread-safe.
 *
 * @param entry as it stands
 * @param amendments what corrects it, oldest first
 * @param attachments what is kept beside it, in order; empty where it is missing
 * @param seal whether its signature holds
 */
public record OnRecord(Entry entry, List<Entry> amendments, List<Optional<byte[]>> attachments, Seal seal) {
    private static final int LOOKED_AT = 20;

    public OnRecord {
        amendments = List.copyOf(amendments);
        attachments = List.copyOf(attachments);
    }

    /** What a signature says. */
    public enum Seal {
        /** Signed with a key that is trusted here, and not changed since. */
        HOLDS,
        /** Signed with a key that is not among the trusted ones. */
        UNKNOWN_KEY,
        /** Changed after it was signed. */
        BROKEN
    }

    /**
     * Everything that belongs to an entry.
     *
     * @param id of the entry, or the end of it: what comes behind the stand's name
     * @throws OrderException when there is none, or more than one
     * @throws StoreException when the store fails
     */
    public static OnRecord of(RecordBook book, String id) throws OrderException, StoreException {
        Entry entry = entry(book.reading(), id);
        List<Optional<byte[]>> attachments = new ArrayList<>();
        for (Digest digest : entry.attachments()) {
            attachments.add(book.reading().attachment(digest));
        }
        return new OnRecord(entry, book.reading().amendments(entry.id()), attachments, seal(book.choice(), entry));
    }

    /**
     * The entry with an id, or the end of one.
     *
     * @throws OrderException when there is none, or more than one
     */
    public static Entry entry(RecordStore store, String id) throws OrderException, StoreException {
        Optional<Entry> exact = store.find(id);
        if (exact.isPresent()) {
            return exact.get();
        }
        List<Entry> ending = id.strip().length() < Search.LEAST_CONTAINS
                ? List.of()
                : store.search(Search.newest(LOOKED_AT).containing(id)).stream()
                        .filter(entry -> entry.id().endsWith("/" + id))
                        .toList();
        if (ending.size() == 1) {
            return ending.get(0);
        }
        throw new OrderException(
                ending.isEmpty()
                        ? "there is no entry %s on record. Look for it: pumpwright record find --serial, --claim or --contains."
                                .formatted(id)
                        : "%d entries end in %s: %s. Give the whole id."
                                .formatted(
                                        ending.size(),
                                        id,
                                        String.join(
                                                ", ",
                                                ending.stream().map(Entry::id).toList())));
    }

    private static Seal seal(StoreChoice choice, Entry entry) throws StoreException {
        CheckingKey key = choice.trusted().get(entry.seal().key());
        if (key == null) {
            return Seal.UNKNOWN_KEY;
        }
        return key.signed(entry.header(), entry.seal().signature()) ? Seal.HOLDS : Seal.BROKEN;
    }
}
