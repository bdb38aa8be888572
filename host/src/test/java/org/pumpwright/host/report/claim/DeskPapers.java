package org.pumpwright.host.report.claim;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.demand.ApplicationRate;
import org.pumpwright.host.demand.GroundSpeed;
import org.pumpwright.host.demand.Planter;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.report.bucket.BucketSamples;
import org.pumpwright.host.report.retest.RetestPage;
import org.pumpwright.host.report.retest.RunSpread;
import org.pumpwright.host.text.Texts;

/** The papers of the desk, made of invented claims and runs. Thread-safe. */
public final class DeskPapers {
    private DeskPapers() {}

    /** Each paper as a page, by its name. */
    public static Map<String, String> all(Texts texts) {
        RunRecord run = SampleRecords.fail();
        Planter planter = new Planter(16, 0.762, ApplicationRate.ofGallonsPerAcre(12), GroundSpeed.ofMilesPerHour(6));
        CustomerFacts facts = new CustomerFacts(
                Optional.of("Example Shop (invented)"),
                Optional.of("C-2026-0117"),
                Optional.of("It starts well in the morning, then the rows on the left run out at the end of the field"),
                PlanterNeed.of(run, planter, "10-34-0", true, planter.whole(), PlanterNeed.USUAL_SPARE),
                Optional.of(BucketSamples.plain()),
                List.of("Cleaned the inlet and fitted a new seal.", "Replaced the plug's two pins."));
        Map<String, String> papers = new LinkedHashMap<>();
        papers.put("customer", CustomerPage.html(run, facts, UnitSystem.US, texts));
        papers.put("customer, nothing known", CustomerPage.html(run, CustomerFacts.NONE, UnitSystem.METRIC, texts));
        papers.put("clerk", ClerkPage.html(ClaimSamples.evidence(ClaimSamples.full(), true), texts));
        papers.put("clerk, nothing known", ClerkPage.html(ClaimSamples.evidence(ClaimSamples.sparse(), false), texts));
        papers.put(
                "factory",
                FactoryPage.html(
                        FactoryCase.of(
                                SampleRecords.traced(),
                                Optional.of(ClaimSamples.full()),
                                ClaimSamples.digest("record")),
                        UnitSystem.US,
                        texts));
        papers.put(
                "retest",
                RetestPage.html(
                        run, ClaimSamples.later(SampleRecords.pass()), RunSpread.NOT_KNOWN, UnitSystem.US, texts));
        return papers;
    }
}
