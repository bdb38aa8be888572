package org.pumpwright.host.app.claim;

import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.Waiver;
import org.pumpwright.host.claim.Waiver.Step;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.record.ledger.StoreException;

/** The unit of a claim arrives at the bench: the claim is found, and learns whether the unit is clean. Thread-safe. */
public final class ArrivalDesk {
    private static final int RINSES = 2;

    private final ClaimDesk desk;
    private final ClaimShelf claims;

    /**
     * @param desk puts acts on record
     * @param claims finds
     */
    public ArrivalDesk(ClaimDesk desk, ClaimShelf claims) {
        this.desk = desk;
        this.claims = claims;
    }

    /**
     * The claim with this number; empty when there is none, or it can't be the number of one.
     *
     * @throws StoreException when it can't be looked up
     */
    public Optional<ClaimFile> find(String number) throws StoreException {
        try {
            return claims.find(ClaimIntake.checkedNumber(number)).map(ClaimShelf.Claim::file);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /**
     * Notes who has made sure that the unit is clean, or who lets it on the stand all the same, unless the claim says so already.
     *
     * @throws OrderException when the rules of the desk do not allow it
     */
    public void handled(String number, Handling handling) throws OrderException, DataFileException, StoreException {
        ClaimFile file = claims.require(number).file();
        if (file.intake().decontamination().confirmed()) {
            return;
        }
        if (handling.cleanBy().isPresent()) {
            String person = handling.cleanBy().get();
            desk.act(number, (now, at) -> new Act.Rinsed(person, RINSES), Optional.empty());
        } else if (handling.uncleaned().isPresent() && waived(file).isEmpty()) {
            Decision person = handling.uncleaned().get();
            desk.act(
                    number,
                    (now, at) -> new Act.Waived(new Waiver(Step.DECONTAMINATION, person.by(), person.reason(), at)),
                    Optional.empty());
        }
    }

    /** Who let the unit on the stand uncleaned before; empty when nobody did. */
    public static Optional<Waiver> waived(ClaimFile file) {
        return file.waivers().stream()
                .filter(each -> each.step() == Step.DECONTAMINATION)
                .findFirst();
    }
}
