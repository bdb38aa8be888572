package org.pumpwright.benchmarks.papers;

import java.util.Optional;
import java.util.function.Supplier;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.report.HtmlReport;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.report.bucket.BucketHtmlReport;
import org.pumpwright.host.report.bucket.BucketSamples;
import org.pumpwright.host.report.bucket.KLabel;
import org.pumpwright.host.report.claim.DeskPapers;
import org.pumpwright.host.report.label.TagLabel;
import org.pumpwright.host.report.label.TagSlip;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** A kind of paper, made from a record anew each time. Thread-safe. */
enum Kind {
    TECHNICIAN("technician's page, PASS", false, () -> HtmlReport.page(SampleRecords.pass(), UnitSystem.US)),
    CROWDED(
            "technician's page, all that can fail",
            false,
            () -> HtmlReport.page(SampleRecords.crowded(), UnitSystem.US)),
    TICKET("stand ticket", false, () -> HtmlReport.page(SampleRecords.invalid(), UnitSystem.US)),
    CUSTOMER("customer's page", false, () -> desk("customer")),
    CLERK("clerk's page", false, () -> desk("clerk")),
    FACTORY("factory's record", false, () -> desk("factory")),
    RETEST("before and after", false, () -> desk("retest")),
    CALIBRATION("calibration report", false, () -> BucketHtmlReport.page(BucketSamples.plain(), UnitSystem.US)),
    METER_LABEL("K label", true, () -> KLabel.html(BucketSamples.plain())),
    TAG("tag label", true, () -> TagLabel.html(TagSlip.of(SampleRecords.pass()), Texts.in(Language.EN)));

    private final String words;
    private final boolean label;
    private final Supplier<String> page;

    Kind(String words, boolean label, Supplier<String> page) {
        this.words = words;
        this.label = label;
        this.page = page;
    }

    /** All papers of the desk are made for one: the time is that of all of them and of one document. */
    private static String desk(String name) {
        return Optional.ofNullable(DeskPapers.all(Texts.in(Language.EN)).get(name))
                .orElseThrow();
    }

    String words() {
        return words;
    }

    boolean label() {
        return label;
    }

    String page() {
        return page.get();
    }
}
