package org.pumpwright.host.app.claim;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.ClaimEntries;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.RefusedException;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.Draft.Amendment;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.record.ledger.StoreException.Reason;

/**
 * The desk: puts acts on record, each as one entry, after its rules were asked. Nothing is ever changed: a correction is an
 * entry too. Two desks may act on one claim at once; the second looks again before it acts. Thread-safe.
 */
public final class ClaimDesk {
    private static final int MOST_TRIES = 10;

    private final RecordStore store;
    private final ClaimShelf claims;
    private final Clock clock;

    /**
     * @param store takes the entries
     * @param clock the shop's time and zone
     */
    public ClaimDesk(RecordStore store, Clock clock) {
        this.store = store;
        this.claims = new ClaimShelf(store);
        this.clock = clock;
    }

    /** An act that depends on how the claim stands. */
    @FunctionalInterface
    public interface Deed {
        /**
         * What is done.
         *
         * @throws RefusedException when the rules do not allow it
         */
        Act on(ClaimFile file, OffsetDateTime now)
                throws RefusedException, OrderException, DataFileException, StoreException;
    }

    /**
     * Opens a claim.
     *
     * @throws OrderException when its number is taken
     */
    public ClaimFile open(ClaimIntake intake) throws OrderException, StoreException {
        if (claims.find(intake.claim()).isPresent()) {
            throw new OrderException(
                    "claim %s is open already. Look at it: pumpwright claim show %s; correct it: pumpwright claim open --sheet FILE --corrects TEXT"
                            .formatted(intake.claim(), intake.claim()));
        }
        store.append(ClaimEntries.draft(intake, 1, new Act.Received(intake), now(), Optional.empty()));
        return claims.get(intake.claim());
    }

    /**
     * Corrects what was written down when a unit came in. What was stays on record and is shown.
     *
     * @param reason why
     */
    public ClaimFile correct(ClaimIntake intake, String reason)
            throws OrderException, DataFileException, StoreException {
        return act(intake.claim(), (file, now) -> new Act.Received(intake), Optional.of(reason));
    }

    /**
     * Does something to a claim.
     *
     * @param corrects why, when it takes the place of the last act of its kind; empty for a new one
     * @throws OrderException when there is no such claim, or the rules do not allow it
     */
    public ClaimFile act(String claim, Deed deed, Optional<String> corrects)
            throws OrderException, DataFileException, StoreException {
        for (int attempt = 1; ; attempt++) {
            ClaimShelf.Claim found = claims.require(claim);
            try {
                append(found, deed, corrects);
                return claims.get(claim);
            } catch (StoreException e) {
                // Another desk acted in the same moment: the rules are asked again about the claim as it stands now.
                if (e.reason() != Reason.ID_TAKEN || attempt >= MOST_TRIES) {
                    throw e;
                }
            }
        }
    }

    private void append(ClaimShelf.Claim found, Deed deed, Optional<String> corrects)
            throws OrderException, DataFileException, StoreException {
        OffsetDateTime now = now();
        Act act;
        try {
            act = deed.on(found.file(), now);
        } catch (RefusedException | IllegalArgumentException e) {
            throw new OrderException(String.valueOf(e.getMessage()));
        }
        Optional<Amendment> amends = Optional.empty();
        if (corrects.isPresent()) {
            amends = Optional.of(new Amendment(found.lastLike(act), corrects.get()));
        }
        ClaimIntake intake = act instanceof Act.Received received
                ? received.intake()
                : found.file().intake();
        Draft draft = ClaimEntries.draft(intake, found.nextPlace(), act, now, amends);
        store.append(draft);
    }

    private OffsetDateTime now() {
        return OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
    }
}
