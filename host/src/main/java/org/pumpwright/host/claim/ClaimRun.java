package org.pumpwright.host.claim;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.ledger.Digest;

/**
 * A run of a claim's unit, as far as the desk needs it. Thread-safe.
 *
 * @param entry id of its entry
 * @param run id of its record
 * @param startedAt when it began
 * @param model id of the model it was tested as
 * @param serial as read from the plate
 * @param technician who tested
 * @param plan id and version
 * @param verdict on the unit
 * @param curve the healthy curve, id and version
 * @param rules name and version of the rules of grading
 * @param trace digest of the samples; empty when none are kept beside the entry
 * @param regradedFrom the record that this one judges again
 * @param practice whether the unit was simulated or invented
 */
public record ClaimRun(
        String entry,
        String run,
        OffsetDateTime startedAt,
        String model,
        String serial,
        String technician,
        String plan,
        Verdict verdict,
        Optional<String> curve,
        Optional<String> rules,
        Optional<Digest> trace,
        Optional<String> regradedFrom,
        boolean practice) {
    /** The plan without its version. */
    public String planName() {
        return plan.replaceFirst(" v\\d+$", "");
    }
}
