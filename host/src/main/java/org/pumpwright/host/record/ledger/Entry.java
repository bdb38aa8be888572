package org.pumpwright.host.record.ledger;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.record.ledger.Draft.Amendment;

/**
 * One entry on record. It is never changed: what corrects it is an entry of its own. Its header is canonical JSON and holds
 * the digests of the content, of everything beside it, of the key and of the entry before with its signature, so that one
 * digest, and one signature, stands for all of the past. Thread-safe.
 *
 * @param chain whose chain, usually a stand's
 * @param number its place in the chain, from 1
 * @param kind what it is about
 * @param id unlike that of any other
 * @param at when it happened, with the shop's UTC offset
 * @param entered when it was put on record by the writer's clock, never before the entry ahead of it
 * @param prior digest of the entry before, {@link Digest#NOTHING} for the first
 * @param content the facts, canonical JSON
 * @param attachments digests of what is kept beside it, in order
 * @param amends what it corrects
 * @param finder by what it is looked for
 * @param seal by whom it was signed
 */
public record Entry(
        String chain,
        long number,
        EntryKind kind,
        String id,
        OffsetDateTime at,
        Instant entered,
        Digest prior,
        String content,
        List<Digest> attachments,
        Optional<Amendment> amends,
        Finder finder,
        Seal seal) {

    /**
     * A signature.
     *
     * @param key digest of the public key
     * @param signature Ed25519 over the header, 128 hexadecimal digits, small letters; empty when not signed yet
     */
    public record Seal(Digest key, String signature) {
        private static final int DIGITS = 128;

        public Seal {
            boolean digits = signature.chars().allMatch(c -> (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'));
            if (!digits || (signature.length() != DIGITS && !signature.isEmpty())) {
                throw new IllegalArgumentException(
                        "'%s' is no signature: %d hexadecimal digits, small letters, are needed"
                                .formatted(signature, DIGITS));
            }
        }

        byte[] bytes() {
            return HexFormat.of().parseHex(signature);
        }
    }

    public Entry {
        attachments = List.copyOf(attachments);
        if (number < 1) {
            throw new IllegalArgumentException("entry %s has number %d, numbers begin with 1".formatted(id, number));
        }
    }

    /** The bytes that are hashed and signed. */
    public byte[] header() {
        return Header.of(this);
    }

    /** The same, signed. */
    public Entry sealed(SigningKey by) {
        Entry unsigned = with(new Seal(by.open().digest(), ""));
        return with(new Seal(by.open().digest(), by.sign(unsigned.header())));
    }

    private Entry with(Seal other) {
        return new Entry(chain, number, kind, id, at, entered, prior, content, attachments, amends, finder, other);
    }

    /** The digest by which the next entry holds on to this one: over the header and then the bytes of the signature. */
    public Digest digest() {
        return digest(header());
    }

    /** The same where the header is at hand already. */
    Digest digest(byte[] header) {
        return Digest.of(header, seal.bytes());
    }
}
