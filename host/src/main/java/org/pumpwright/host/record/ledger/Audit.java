package org.pumpwright.host.record.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Checks everything that a store keeps: that nothing was changed, removed, put in between or put in another order, and that
 * what is beside the entries is there and unchanged. Reads the store once; memory does not grow with the entries, and by at most
 * 64 bytes for each attachment. Uses all processors. That the end of a chain was cut off can be seen only from heads that
 * were written down. Thread-safe.
 *
 * <p>Every digest of every entry and attachment is computed. Signatures are checked where a stretch of entries that hold on to
 * each other under one key ends; why that proves each entry of the stretch: {@code docs/reference/records.md}.
 */
public final class Audit {
    private static final int AT_ONCE = 2000;

    private final RecordStore store;
    private final Keyring keys;
    private final Heads heads;
    private final Depth depth;
    private final Findings findings = new Findings();
    private final DigestSet beside = new DigestSet();
    private final Set<Digest> changed = new TreeSet<>(Comparator.comparing(Digest::hex));

    /** Which signatures are checked. */
    public enum Depth {
        /** Those that prove all the others. */
        PROVING_SIGNATURES,
        /** Each one, about a fifth of a millisecond of one processor each. */
        EVERY_SIGNATURE
    }

    /**
     * Something that was found.
     *
     * @param chain whose chain; empty when it belongs to none
     * @param number the entry's place in the chain; 0 when it is no entry
     * @param id the entry, empty when unknown
     * @param says what, in plain words
     */
    public record Trouble(String chain, long number, String id, String says) {}

    /**
     * What an audit found.
     *
     * @param chains that were read
     * @param entries how many were read
     * @param attachments how many were read
     * @param troubleCount how many troubles there are
     * @param troubles the first thousand of them
     * @param notices what is allowed but worth a look, such as an entry dated before the one ahead of it; the first thousand
     */
    public record Result(
            List<String> chains,
            long entries,
            long attachments,
            long troubleCount,
            List<Trouble> troubles,
            List<Trouble> notices) {
        public Result {
            chains = List.copyOf(chains);
            troubles = List.copyOf(troubles);
            notices = List.copyOf(notices);
        }

        /** Whether nothing is wrong. */
        public boolean clean() {
            return troubleCount == 0;
        }
    }

    private Audit(RecordStore store, Keyring keys, Heads heads, Depth depth) {
        this.store = store;
        this.keys = keys;
        this.heads = heads;
        this.depth = depth;
    }

    /**
     * Audits a store.
     *
     * @param keys that were ever trusted
     * @param heads that were written down, {@link Heads#NONE} if none were
     * @throws StoreException when the store can't be read at all
     */
    public static Result of(RecordStore store, Keyring keys, Heads heads, Depth depth) throws StoreException {
        return new Audit(store, keys, heads, depth).all();
    }

    private Result all() throws StoreException {
        for (String says : store.damage()) {
            findings.trouble("", 0, "", says);
        }
        store.eachAttachment(this::attachment);
        Set<String> chains = new TreeSet<>(store.chains());
        chains.addAll(heads.chains());
        for (String chain : chains) {
            chain(chain);
        }
        beside.eachNotAsked(this::belongsToNone);
        changed.forEach(key -> belongsToNone(key.hex()));
        return findings.result(List.copyOf(chains));
    }

    private void attachment(String keptUnder, byte[] bytes) {
        findings.attachmentRead();
        Digest key;
        try {
            key = new Digest(keptUnder);
        } catch (IllegalArgumentException e) {
            findings.trouble("", 0, "", "something is kept under a name that is no digest: " + e.getMessage());
            return;
        }
        if (Digest.of(bytes).equals(key)) {
            beside.add(key);
        } else {
            changed.add(key);
        }
    }

    private void chain(String chain) throws StoreException {
        ChainAudit audit = new ChainAudit(chain, keys, heads.of(chain), findings);
        List<RecordStore.Kept> waiting = new ArrayList<>(AT_ONCE);
        List<Entry> withoutAttachment = new ArrayList<>();
        store.each(chain, kept -> {
            waiting.add(kept);
            if (waiting.size() == AT_ONCE) {
                check(audit, waiting, withoutAttachment);
            }
        });
        check(audit, waiting, withoutAttachment);
        audit.end();
        for (Entry entry : withoutAttachment) {
            look(entry);
        }
    }

    /** Hashes a handful of entries at once on all processors, then goes through them in order. */
    private void check(ChainAudit audit, List<RecordStore.Kept> waiting, List<Entry> withoutAttachment) {
        boolean everySignature = depth == Depth.EVERY_SIGNATURE;
        List<Optional<ChainAudit.Hashed>> hashed = waiting.parallelStream()
                .map(kept -> audit.hashed(kept, everySignature))
                .toList();
        for (int i = 0; i < waiting.size(); i++) {
            findings.entryRead();
            audit.kept(waiting.get(i));
            hashed.get(i).ifPresent(audit::next);
            waiting.get(i)
                    .entry()
                    .filter(entry -> !allBeside(entry))
                    .filter(entry -> withoutAttachment.size() < AT_ONCE)
                    .ifPresent(withoutAttachment::add);
        }
        waiting.clear();
    }

    private boolean allBeside(Entry entry) {
        boolean all = true;
        for (Digest digest : entry.attachments()) {
            all &= beside.ask(digest);
        }
        return all;
    }

    /** Looks again for what was not there: it may have come with an entry that was put on record since. */
    private void look(Entry entry) throws StoreException {
        for (Digest digest : entry.attachments()) {
            Optional<byte[]> found = store.attachment(digest);
            if (found.isEmpty()) {
                trouble(entry, "what belongs beside it is missing: " + digest.hex());
            } else if (!Digest.of(found.get()).equals(digest)) {
                changed.remove(digest);
                trouble(entry, "what belongs beside it was changed: " + digest.hex());
            }
        }
    }

    private void belongsToNone(String digest) {
        findings.trouble("", 0, "", "something is kept that belongs to no entry: its digest begins with " + digest);
    }

    private void trouble(Entry entry, String says) {
        findings.trouble(entry.chain(), entry.number(), entry.id(), says);
    }
}
