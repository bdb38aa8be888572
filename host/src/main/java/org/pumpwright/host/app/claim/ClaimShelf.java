package org.pumpwright.host.app.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.ClaimEntries;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimFold;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;

/** Finds claims on record. Thread-safe. */
public final class ClaimShelf {
    private final RecordStore store;

    /** @param store is only read */
    public ClaimShelf(RecordStore store) {
        this.store = store;
    }

    /**
     * A claim and the entries it was made of.
     *
     * @param file as it stands
     * @param entries by chain and place in it
     */
    public record Claim(ClaimFile file, List<Entry> entries) {
        public Claim {
            entries = List.copyOf(entries);
        }

        int nextPlace() {
            return 1
                    + entries.stream()
                            .filter(ClaimEntries::isAct)
                            .mapToInt(ClaimEntries::place)
                            .max()
                            .orElse(0);
        }

        /** Id of the last act like this one. */
        String lastLike(Act act) throws OrderException {
            return entries.stream()
                    .filter(ClaimEntries::isAct)
                    .filter(entry -> ClaimEntries.read(entry, Optional.empty())
                            .getClass()
                            .equals(act.getClass()))
                    .max(Comparator.comparingInt(ClaimEntries::place))
                    .map(Entry::id)
                    .orElseThrow(() -> new OrderException(
                            "claim %s has nothing of this kind yet that could be corrected".formatted(file.number())));
        }
    }

    /** The claim with this number. */
    public Optional<Claim> find(String number) throws StoreException {
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : store.ofClaim(number)) {
            if (entry.finder().claim().filter(number::equals).isPresent()) {
                entries.add(entry);
            }
        }
        entries.sort(Comparator.comparing(Entry::chain).thenComparing(Entry::number));
        try {
            return ClaimFold.of(entries, this::beside).map(file -> new Claim(file, entries));
        } catch (Unread e) {
            throw e.why;
        }
    }

    /**
     * The claim with this number.
     *
     * @throws OrderException when there is none
     */
    public Claim require(String number) throws OrderException, StoreException {
        return find(number)
                .orElseThrow(() -> new OrderException(
                        "there is no claim '%s' on record. Open claims: pumpwright claim list; a new one: pumpwright claim open"
                                .formatted(number)));
    }

    ClaimFile get(String number) throws OrderException, StoreException {
        return require(number).file();
    }

    /** Every claim, practice ones too. */
    public List<ClaimFile> all() throws StoreException {
        return all(EnumSet.allOf(EntryKind.class), this::beside);
    }

    /** The same without their runs and without whose units they are, which is all that a list needs and soon read. */
    public List<ClaimFile> outlines() throws StoreException {
        return all(EnumSet.complementOf(EnumSet.of(EntryKind.RUN, EntryKind.GRADE)), digest -> Optional.empty());
    }

    /** Numbers of the claims that have a run on record. */
    public Set<String> tested() throws StoreException {
        Set<String> numbers = new HashSet<>();
        store.eachOfClaims(
                EnumSet.of(EntryKind.RUN), entry -> entry.finder().claim().ifPresent(numbers::add));
        return numbers;
    }

    private List<ClaimFile> all(Set<EntryKind> kinds, ClaimFold.Beside beside) throws StoreException {
        ClaimsInTurn claims = new ClaimsInTurn(beside);
        try {
            store.eachOfClaims(kinds, claims::add);
            return claims.end();
        } catch (Unread e) {
            throw e.why;
        }
    }

    private Optional<byte[]> beside(Digest digest) {
        try {
            return store.attachment(digest);
        } catch (StoreException e) {
            throw new Unread(e);
        }
    }

    /** Carries a store's trouble through a function that can't. */
    private static final class Unread extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient StoreException why;

        Unread(StoreException why) {
            super(why);
            this.why = why;
        }
    }
}
