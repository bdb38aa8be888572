package org.pumpwright.host.claim.coverage;

import java.time.LocalDate;
import java.util.List;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.ClaimFile;

/**
 * What a claim is looked at with besides its own file. Thread-safe.
 *
 * @param file the claim
 * @param earlier earlier claims about the same serial number
 * @param goodwillGiven what was given this calendar year in other claims without being owed
 */
public record Circumstances(ClaimFile file, List<EarlierClaim> earlier, Amount goodwillGiven) {
    public Circumstances {
        earlier = List.copyOf(earlier);
    }

    /**
     * An earlier claim about the same serial number.
     *
     * @param claim its number
     * @param complaintCode what was complained of
     * @param returned the day the unit went back
     */
    public record EarlierClaim(String claim, String complaintCode, LocalDate returned) {}
}
