package org.pumpwright.host.record.ledger;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * Where entries are kept. An entry that was acknowledged is there whole for ever; one that was not is not there at all.
 * Nothing is changed or taken away. Thread-safe; several programs may use one store at once.
 */
public interface RecordStore extends AutoCloseable {
    /**
     * Puts something on record at the end of this store's own chain, signed. When it returns, the entry is safe on disk.
     *
     * @throws StoreException when it is not on record, because its id is taken, what it amends is unknown, the entry it would
     *     follow was changed after it was signed, or the store failed
     */
    default Entry append(Draft draft) throws StoreException {
        return append(List.of(draft)).get(0);
    }

    /** Puts several things on record one after the other, as {@link #append(Draft)} does: all of them or none. */
    List<Entry> append(List<Draft> drafts) throws StoreException;

    /**
     * Takes entries of another store, as they are, with their chain, seals and attachments; those that are here already are
     * left as they are.
     *
     * @return how many were new
     * @throws StoreException when one does not follow what is here of its chain, or what comes beside it is not what it names;
     *     then none of them was taken
     */
    int take(List<Foreign> entries) throws StoreException;

    /**
     * An entry of another store.
     *
     * @param entry as it stands there
     * @param attachments in the order of the entry's digests
     */
    record Foreign(Entry entry, List<byte[]> attachments) {
        public Foreign {
            attachments = List.copyOf(attachments);
        }
    }

    /** The entry with an id. */
    Optional<Entry> find(String id) throws StoreException;

    /** The entries that a search finds, the newest first by the shop's own date and time, at most as many as it asks for. */
    List<Entry> search(Search search) throws StoreException;

    /** All entries of one claim, the oldest first; the case of its letters does not matter. */
    List<Entry> ofClaim(String claim) throws StoreException;

    /** Every entry of these kinds that belongs to a claim, one claim after the other; memory does not grow with them. */
    void eachOfClaims(Set<EntryKind> kinds, Consumer<Entry> found) throws StoreException;

    /** The entries that amend one, oldest first. */
    List<Entry> amendments(String id) throws StoreException;

    /** What is kept beside entries under a digest. */
    Optional<byte[]> attachment(Digest digest) throws StoreException;

    /** The names of all chains, in alphabetical order. */
    List<String> chains() throws StoreException;

    /** Every entry of a chain, from the first on; memory does not grow with the chain. */
    void each(String chain, Consumer<Kept> kept) throws StoreException;

    /**
     * An entry as the store keeps it.
     *
     * @param number its place in the chain
     * @param entry the entry; empty when the store no longer holds one that can be read
     * @param trouble what is wrong with how it is kept: unreadable, or found by other words than its own
     */
    record Kept(long number, Optional<Entry> entry, Optional<String> trouble) {}

    /**
     * Everything that is kept beside entries, in no order; memory does not grow with it.
     *
     * @param kept gets the key under which something is kept, which is the digest of the bytes if nobody changed one of them,
     *     and the bytes
     */
    void eachAttachment(BiConsumer<String, byte[]> kept) throws StoreException;

    /**
     * What the database finds wrong with itself, in plain words: the structure of its file, and indexes that do not fit what
     * they are made from. May take a while, in which writers wait.
     */
    List<String> damage() throws StoreException;

    /** Where the last entry of a chain stands; empty for a chain without entries. */
    Optional<Head> head(String chain) throws StoreException;

    /**
     * The end of a chain. Written down elsewhere now and then, it shows later whether the end was cut off.
     *
     * @param number of the last entry
     * @param digest of the last entry
     */
    record Head(long number, Digest digest) {
        /** The end of a chain whose last entry is this one. */
        public static Head of(Entry entry) {
            return new Head(entry.number(), entry.digest());
        }
    }

    @Override
    void close();
}
