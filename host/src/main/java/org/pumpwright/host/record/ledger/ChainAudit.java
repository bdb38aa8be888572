package org.pumpwright.host.record.ledger;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Checks one chain from its first entry on, each entry given in turn. The digest of every entry is compared with what the next
 * one holds; a signature is checked wherever a stretch of entries that hold on to each other under one key ends, and so proves
 * the stretch: whoever changes an entry of it, its signature included, breaks the next one's hold, up to the signed end.
 * Confined to one thread.
 */
final class ChainAudit {
    /** A clock that was set right by a few minutes is no back-dating (assumed). */
    private static final Duration CLOCK_SLACK = Duration.ofMinutes(5);

    private final String chain;
    private final Keyring keys;
    private final Findings findings;
    private final Map<Long, Digest> known = new HashMap<>();
    private long expected = 1;
    private Instant latest = Instant.EPOCH;
    private @Nullable Hashed last;

    ChainAudit(String chain, Keyring keys, List<RecordStore.Head> known, Findings findings) {
        this.chain = chain;
        this.keys = keys;
        this.findings = findings;
        for (RecordStore.Head head : known) {
            Digest other = this.known.put(head.number(), head.digest());
            if (other != null && !other.equals(head.digest())) {
                findings.trouble(chain, head.number(), "", "was written down with two digests");
            }
        }
    }

    /**
     * An entry with what costs time to find out.
     *
     * @param kept as the store keeps it
     * @param digest of the header and the signature
     * @param signed whether its signature holds; empty when it was not looked at
     */
    record Hashed(RecordStore.Kept kept, Digest digest, Optional<Boolean> signed) {
        Entry entry() {
            return kept.entry().orElseThrow();
        }
    }

    /** Does the costly part for one entry. Touches nothing of this audit but the keys: several may run at once. */
    Optional<Hashed> hashed(RecordStore.Kept kept, boolean withSignature) {
        return kept.entry().map(entry -> {
            byte[] header = entry.header();
            Optional<Boolean> signed = withSignature ? Optional.of(signed(entry, header)) : Optional.empty();
            return new Hashed(kept, entry.digest(header), signed);
        });
    }

    /** Checks what the store says of a row; the rest is checked in {@link #next} if the row could be read. */
    void kept(RecordStore.Kept kept) {
        String id = kept.entry().map(Entry::id).orElse("");
        kept.trouble().ifPresent(says -> findings.trouble(chain, kept.number(), id, says));
    }

    /** Checks the next entry. */
    void next(Hashed hashed) {
        Entry entry = hashed.entry();
        if (!entry.chain().equals(chain)) {
            trouble(entry, "belongs to chain " + entry.chain());
        }
        if (entry.number() != expected) {
            trouble(
                    entry,
                    "stands where entry %d should: entries are missing, doubled or out of order".formatted(expected));
        }
        link(hashed);
        hashed.signed().filter(holds -> !holds).ifPresent(no -> sayUnsigned(entry));
        checkTime(entry);
        Digest then = known.remove(entry.number());
        if (then != null && !then.equals(hashed.digest())) {
            trouble(entry, "is another than when the end of the chain was written down");
        }
        expected = entry.number() + 1;
        last = hashed;
    }

    /** Ends the chain. */
    void end() {
        if (last != null) {
            prove(last);
        }
        known.keySet().stream()
                .sorted()
                .forEach(number -> findings.trouble(
                        chain, number, "", "is missing: the chain was at least this long once, its end was cut off"));
    }

    private void link(Hashed hashed) {
        Entry entry = hashed.entry();
        Digest prior = last == null ? Digest.NOTHING : last.digest();
        boolean holds = entry.prior().equals(prior);
        if (!holds) {
            trouble(entry, "does not follow the entry before it: one of the two was changed, removed or put in later");
        }
        if (last != null
                && (!holds || !last.entry().seal().key().equals(entry.seal().key()))) {
            prove(last);
        }
        if (!holds) {
            prove(hashed);
        }
    }

    /** Checks the signature of an entry if that was not done already. */
    private void prove(Hashed hashed) {
        if (hashed.signed().isEmpty() && !signed(hashed.entry(), hashed.entry().header())) {
            sayUnsigned(hashed.entry());
        }
    }

    private boolean signed(Entry entry, byte[] header) {
        return keys.key(entry.seal().key())
                .filter(key -> key.signed(header, entry.seal().signature()))
                .isPresent();
    }

    private void sayUnsigned(Entry entry) {
        boolean trusted = keys.key(entry.seal().key()).isPresent();
        trouble(
                entry,
                trusted
                        ? "was changed after it was signed"
                        : "is signed with a key that is not trusted: "
                                + entry.seal().key().hex());
    }

    private void checkTime(Entry entry) {
        if (last != null && entry.entered().isBefore(last.entry().entered())) {
            trouble(
                    entry,
                    "was put on record at %s, before the entry ahead of it: it was dated back"
                            .formatted(entry.entered()));
        }
        Instant at = entry.at().toInstant();
        if (at.isAfter(entry.entered().plus(CLOCK_SLACK))) {
            notice(entry, "the clock was wrong, or it was dated ahead");
        } else if (at.plus(CLOCK_SLACK).isBefore(latest)) {
            notice(entry, "entered late, or dated back behind an entry ahead of it");
        }
        if (at.isAfter(latest)) {
            latest = at;
        }
    }

    private void notice(Entry entry, String why) {
        findings.notice(
                chain,
                entry.number(),
                entry.id(),
                "happened at %s, entered at %s: %s".formatted(entry.at(), entry.entered(), why));
    }

    private void trouble(Entry entry, String says) {
        findings.trouble(chain, entry.number(), entry.id(), says);
    }
}
