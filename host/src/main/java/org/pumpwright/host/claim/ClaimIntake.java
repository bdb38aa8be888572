package org.pumpwright.host.claim;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What was written down when a unit came in. It may have gaps: what is missing is named, and keeps the unit off the stand.
 * Thread-safe.
 *
 * @param claim number of the claim or job: letters, digits, point, dash and underline
 * @param received when it came, with the shop's UTC offset
 * @param people who brought it and whose it is
 * @param unit what came
 * @param use how long and how much it was in use
 * @param planter what it did on the planter
 * @param complaint what the customer says
 * @param decontamination whether product is still in it
 * @param value what the claim is about in money; empty when nobody has said
 * @param takenBy who wrote this down
 * @param practice whether the unit is simulated or invented: every paper then says so
 */
public record ClaimIntake(
        String claim,
        OffsetDateTime received,
        People people,
        UnitAsReceived unit,
        TimeInUse use,
        OnThePlanter planter,
        ComplaintAsMade complaint,
        Decontamination decontamination,
        Optional<Amount> value,
        String takenBy,
        boolean practice) {
    private static final Pattern NUMBER = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");

    public ClaimIntake {
        claim = checkedNumber(claim);
        received = Words.second(received);
        takenBy = Words.bounded("taken by", takenBy);
    }

    /**
     * A claim number that can be used in names of files too.
     *
     * @throws IllegalArgumentException when it cannot
     */
    public static String checkedNumber(String number) {
        if (!NUMBER.matcher(number).matches()) {
            throw new IllegalArgumentException(
                    "'%s' can't be a claim number: it has 1 to 40 letters, digits, points, dashes and underlines, and begins with a letter or digit"
                            .formatted(number));
        }
        return number;
    }

    /** The same with other people. */
    ClaimIntake with(People others) {
        return new ClaimIntake(
                claim, received, others, unit, use, planter, complaint, decontamination, value, takenBy, practice);
    }

    /** The same with another state of decontamination. */
    public ClaimIntake with(Decontamination now) {
        return new ClaimIntake(claim, received, people, unit, use, planter, complaint, now, value, takenBy, practice);
    }
}
