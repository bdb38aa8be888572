package org.pumpwright.host.record.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.record.ledger.RecordStore.Foreign;
import org.pumpwright.host.record.ledger.StoreException.Reason;

/**
 * Copies a store into an empty one, entry by entry with what is beside it, and audits the copy. What is put on record
 * meanwhile is left for the next copy. Confined to one thread.
 */
public final class StoreCopy {
    private static final int ENTRIES_AT_ONCE = 500;
    private static final long BYTES_AT_ONCE = 16L << 20;

    private final RecordStore from;
    private final RecordStore to;
    private final List<Foreign> waiting = new ArrayList<>();
    private long waitingBytes;

    private StoreCopy(RecordStore from, RecordStore to) {
        this.from = from;
        this.to = to;
    }

    /**
     * Copies.
     *
     * @param keys that are trusted
     * @return the audit of the copy, which is clean
     * @throws StoreException when the other store is not empty, one of the two failed, or the copy is not clean or not the same
     */
    public static Audit.Result copy(RecordStore from, RecordStore to, Keyring keys) throws StoreException {
        if (!to.chains().isEmpty()) {
            throw new StoreException(
                    Reason.ID_TAKEN,
                    "there are entries of %s already where the copy should go. Nothing was copied; choose an empty store."
                            .formatted(String.join(", ", to.chains())));
        }
        Heads heads = Heads.of(from);
        StoreCopy copy = new StoreCopy(from, to);
        for (Heads.Line line : heads.lines()) {
            copy.chain(line);
        }
        return checked(to, keys, heads);
    }

    private static Audit.Result checked(RecordStore copy, Keyring keys, Heads heads) throws StoreException {
        Audit.Result result = Audit.of(copy, keys, heads, Audit.Depth.PROVING_SIGNATURES);
        if (!result.clean()) {
            Audit.Trouble first = result.troubles().get(0);
            throw new StoreException(
                    Reason.STORE_FAILED,
                    "the copy is not clean: entry %d of %s (%s) %s; %d troubles in all. Run an audit of the store that was copied."
                            .formatted(first.number(), first.chain(), first.id(), first.says(), result.troubleCount()));
        }
        return result;
    }

    private void chain(Heads.Line line) throws StoreException {
        try {
            from.each(line.chain(), kept -> {
                if (kept.number() <= line.head().number()) {
                    add(readable(line.chain(), kept));
                }
            });
        } catch (Stopped e) {
            throw e.why;
        }
        flush();
    }

    private static Entry readable(String chain, RecordStore.Kept kept) {
        return kept.entry()
                .orElseThrow(() -> new Stopped(new StoreException(
                        Reason.STORE_FAILED,
                        "entry %d of %s %s, so the store can't be copied. Run an audit of it."
                                .formatted(kept.number(), chain, kept.trouble().orElse("cannot be read")))));
    }

    private void add(Entry entry) {
        try {
            List<byte[]> attachments = new ArrayList<>();
            for (Digest digest : entry.attachments()) {
                Optional<byte[]> bytes = from.attachment(digest);
                attachments.add(bytes.orElseThrow(() -> new Stopped(new StoreException(
                        Reason.STORE_FAILED,
                        "what belongs beside entry %s is missing, so the store can't be copied. Run an audit of it."
                                .formatted(entry.id())))));
                waitingBytes += bytes.get().length;
            }
            waiting.add(new Foreign(entry, attachments));
            if (waiting.size() >= ENTRIES_AT_ONCE || waitingBytes >= BYTES_AT_ONCE) {
                flush();
            }
        } catch (StoreException e) {
            throw new Stopped(e);
        }
    }

    private void flush() throws StoreException {
        to.take(waiting);
        waiting.clear();
        waitingBytes = 0;
    }

    /** Carries a trouble out of the reading of a chain. */
    private static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final StoreException why;

        Stopped(StoreException why) {
            super(why);
            this.why = why;
        }
    }
}
