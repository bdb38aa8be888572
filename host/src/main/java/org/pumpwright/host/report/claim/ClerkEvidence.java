package org.pumpwright.host.report.claim;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.report.sheet.Picture;

/**
 * What the clerk's page is made of. Thread-safe.
 *
 * @param shop name of the shop; empty where none is set
 * @param file everything on record of the claim
 * @param run the run that the finding rests on, for the health of the stand; empty when there is none
 * @param coverage what the coverage rules say; empty when there are none
 * @param masterCheck the last check of the stand by a master unit, with its day; empty when none is on record
 * @param thumbnails small versions of photos, by the digest of the photo on record
 * @param items what else belongs to the evidence: entries, records, papers
 */
public record ClerkEvidence(
        Optional<String> shop,
        ClaimFile file,
        Optional<RunRecord> run,
        Optional<CoverageAssessment> coverage,
        Optional<String> masterCheck,
        Map<Digest, Picture> thumbnails,
        List<Item> items) {
    public ClerkEvidence {
        thumbnails = Map.copyOf(thumbnails);
        items = List.copyOf(items);
    }

    /**
     * One item of evidence.
     *
     * @param name what it is, or the name of its file
     * @param sha256 of its bytes
     */
    public record Item(String name, Digest sha256) {}
}
