package org.pumpwright.host.record.ledger;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Checks a chain from its first entry on: nothing changed, removed, put in between, put in another order or dated back.
 * Each entry is given in turn. What it cannot see is that the end was cut off: for that the head is compared with one written
 * down elsewhere. Confined to one thread.
 */
public final class Audit {
    /** A clock that was set right by a few minutes is no back-dating (assumed). */
    private static final Duration CLOCK_SLACK = Duration.ofMinutes(5);

    private static final int MOST_TROUBLES = 1000;

    private final String chain;
    private final Map<Digest, CheckingKey> keys;
    private final List<Trouble> troubles = new ArrayList<>();
    private long expected = 1;
    private Digest prior = Digest.NOTHING;
    private Instant latest = Instant.MIN;

    /**
     * An audit of one chain.
     *
     * @param keys the keys that were ever trusted, by their digest
     */
    public Audit(String chain, Map<Digest, CheckingKey> keys) {
        this.chain = chain;
        this.keys = Map.copyOf(keys);
    }

    /**
     * Something that does not hold.
     *
     * @param number the entry's place in the chain
     * @param id the entry
     * @param says what, in plain words
     */
    public record Trouble(long number, String id, String says) {}

    /** Checks the next entry of the chain. */
    public void next(RecordStore.Kept kept) {
        String id = kept.entry().map(Entry::id).orElse("");
        kept.trouble().ifPresent(says -> trouble(kept.number(), id, says));
        kept.entry().ifPresent(this::next);
    }

    private void next(Entry entry) {
        if (!entry.chain().equals(chain)) {
            trouble(entry, "belongs to chain " + entry.chain());
        }
        if (entry.number() != expected) {
            trouble(
                    entry,
                    "stands where entry %d should: entries are missing, doubled or out of order".formatted(expected));
        }
        if (!entry.prior().equals(prior)) {
            trouble(entry, "does not follow the entry before it: one of the two was changed or put in later");
        }
        checkSeal(entry);
        checkTime(entry);
        expected = entry.number() + 1;
        prior = entry.digest();
    }

    /** Checks something that is kept beside an entry. */
    public void attachment(Entry entry, Digest named, Optional<byte[]> found) {
        if (found.isEmpty()) {
            trouble(entry, "what belongs beside it is missing: " + named.hex());
        } else if (!Digest.of(found.get()).equals(named)) {
            trouble(entry, "what belongs beside it was changed: " + named.hex());
        }
    }

    /**
     * Compares the end with a head that was written down earlier. To be asked when all entries were given.
     *
     * @param known the head as it was then
     * @param digestThen digest of the entry with that number as it is now; empty when there is none
     */
    public void against(RecordStore.Head known, Optional<Digest> digestThen) {
        if (digestThen.isEmpty()) {
            troubles.add(new Trouble(
                    known.number(), "", "is missing: the chain ended here or later once, and its end was cut off"));
        } else if (!digestThen.get().equals(known.digest())) {
            troubles.add(new Trouble(known.number(), "", "is another than when the end was written down"));
        }
    }

    /** Everything found, in the order of the chain; after the first thousand no more are noted. */
    public List<Trouble> troubles() {
        return List.copyOf(troubles);
    }

    private void checkSeal(Entry entry) {
        CheckingKey key = keys.get(entry.seal().key());
        if (key == null) {
            trouble(
                    entry,
                    "is signed with a key that is not trusted: "
                            + entry.seal().key().hex());
        } else if (!key.signed(entry.header(), entry.seal().signature())) {
            trouble(entry, "was changed after it was signed");
        }
    }

    private void checkTime(Entry entry) {
        Instant at = entry.at().toInstant();
        if (at.isBefore(latest.equals(Instant.MIN) ? latest : latest.minus(CLOCK_SLACK))) {
            trouble(
                    entry,
                    "is dated %s, before the entry ahead of it: dated back, or the clock was set"
                            .formatted(entry.at()));
        }
        if (at.isAfter(latest)) {
            latest = at;
        }
    }

    private void trouble(Entry entry, String says) {
        trouble(entry.number(), entry.id(), says);
    }

    private void trouble(long number, String id, String says) {
        if (troubles.size() < MOST_TROUBLES) {
            troubles.add(new Trouble(number, id, says));
        }
    }
}
