package org.pumpwright.host.report.claim;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.record.BucketRecord;

/**
 * What the customer's page says beside the run. Every part may be missing; the page then says so or leaves a line to write on.
 * Thread-safe.
 *
 * @param shop name of the shop; empty where none is set
 * @param claim number of the claim or job
 * @param complaint in the customer's own words
 * @param need what the planter needs
 * @param calibration the newest bucket test of the unit or its meter
 * @param done what was done beside the test, one sentence each, as the shop wrote it
 */
public record CustomerFacts(
        Optional<String> shop,
        Optional<String> claim,
        Optional<String> complaint,
        Optional<PlanterNeed> need,
        Optional<BucketRecord> calibration,
        List<String> done) {
    /** Nothing is known beside the run. */
    public static final CustomerFacts NONE = new CustomerFacts(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    public CustomerFacts {
        done = List.copyOf(done);
    }
}
