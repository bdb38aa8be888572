package org.pumpwright.host.app.bucket;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Version;
import org.pumpwright.host.calibrate.BucketEvaluation;
import org.pumpwright.host.calibrate.BucketRefused;
import org.pumpwright.host.calibrate.BucketResult;
import org.pumpwright.host.calibrate.Problem;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.report.bucket.BucketHtmlReport;
import org.pumpwright.host.report.bucket.BucketTextReport;
import org.pumpwright.host.report.bucket.DccCertificate;
import org.pumpwright.host.report.bucket.KLabel;

/** Works a sheet out, keeps its record and makes its papers. Thread-safe. */
public final class BucketCalibration {
    private static final DateTimeFormatter ID = DateTimeFormatter.ofPattern("'K'yyyyMMdd'T'HHmmss.SSS'Z'", Locale.ROOT);
    private static final String RULE =
            "A K is accepted when the runs at each flow agree within the gate, one K is off by at most"
                    + " 2 % anywhere in the declared range, and it has moved by at most 1.5 % since the last one. Simple acceptance:"
                    + " the stated uncertainty is not taken off these limits.";

    private final Path folder;
    private final Clock clock;

    /**
     * @param folder where records are kept
     * @param clock the shop's time and zone
     */
    public BucketCalibration(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * What the papers say that the sheet does not.
     *
     * @param shop who did it
     * @param override why a rule that does not hold is overridden; empty where none is
     * @param next when to calibrate next, where the customer has agreed to be told
     * @param amends the record that this one takes the place of; empty for a first report
     * @param simulated whether the readings come from a simulated stand
     */
    public record Wishes(
            ShopFile.Settings shop,
            Optional<String> override,
            Optional<String> next,
            Optional<BucketRecord.Amendment> amends,
            boolean simulated) {}

    /**
     * What came of it.
     *
     * @param result worked out
     * @param record what the papers are made of
     */
    public record Done(BucketResult result, BucketRecord record) {}

    /**
     * The files of a test.
     *
     * @param record machine-readable, whole, never edited
     * @param page the report to print
     * @param text the same as text
     * @param label for the meter
     * @param certificate for machines
     */
    public record Kept(Path record, Path page, Path text, Path label, Path certificate) {
        /** In the order of their use. */
        public List<Path> all() {
            return List.of(page, text, label, certificate, record);
        }
    }

    /**
     * Works a sheet out.
     *
     * @throws OrderException with every reason found why the sheet gives no K, each with its line
     */
    public Done work(Sheet sheet, Wishes wishes) throws OrderException {
        try {
            BucketResult result = BucketEvaluation.of(sheet.test());
            return new Done(result, record(sheet, result, wishes));
        } catch (BucketRefused e) {
            throw refused(sheet, e);
        }
    }

    /** Every reason with its place. */
    static OrderException refused(Sheet sheet, BucketRefused refused) {
        return new OrderException("no K from this sheet:\n"
                + String.join(
                        "\n",
                        refused.problems().stream()
                                .map(problem -> "  " + told(sheet, problem))
                                .toList()));
    }

    private static String told(Sheet sheet, Problem problem) {
        return "%s: %s.".formatted(sheet.place(problem.field()), problem.sentence());
    }

    private BucketRecord record(Sheet sheet, BucketResult result, Wishes wishes) {
        Recording recording = new Recording(sheet, result);
        OffsetDateTime now = OffsetDateTime.now(clock);
        boolean overridden = wishes.override().isPresent();
        return new BucketRecord(
                ID.format(now.withOffsetSameInstant(ZoneOffset.UTC)),
                now,
                Version.text(),
                wishes.shop().shop(),
                sheet.job(),
                sheet.meter(),
                recording.method(),
                sheet.equipment(),
                sheet.conditions(),
                recording.flows(),
                recording.result(overridden),
                new BucketRecord.Wording(
                        recording.deviations(wishes.override()),
                        recording.opinions(),
                        RULE,
                        wishes.next(),
                        wishes.amends(),
                        ""),
                sheet.source(),
                sheet.invented() || wishes.shop().invented() || wishes.simulated());
    }

    /** Where the record of a test is kept. */
    public Path file(BucketRecord record) {
        return folder.resolve(record.id()).resolve("bucket.json");
    }

    /**
     * Keeps the record, whole or not at all, then makes its papers beside it.
     *
     * @throws RunRecordException when the record or its papers can't be written
     */
    public Kept keep(BucketRecord record, UnitSystem units) throws RunRecordException {
        Path own = folder.resolve(record.id());
        Kept kept = new Kept(
                file(record),
                own.resolve("report.html"),
                own.resolve("report.txt"),
                own.resolve("label.html"),
                own.resolve("certificate.xml"));
        BucketRecordFile.write(record, kept.record());
        try {
            Files.writeString(kept.page(), BucketHtmlReport.page(record, units), StandardCharsets.UTF_8);
            Files.writeString(kept.text(), BucketTextReport.page(record, units), StandardCharsets.UTF_8);
            Files.writeString(kept.label(), KLabel.html(record), StandardCharsets.UTF_8);
            Files.writeString(own.resolve("label.txt"), KLabel.text(record), StandardCharsets.UTF_8);
            Files.writeString(kept.certificate(), DccCertificate.xml(record), StandardCharsets.UTF_8);
            return kept;
        } catch (IOException e) {
            throw new RunRecordException(
                    own,
                    "the papers can't be written: " + e.getMessage(),
                    "Free some space, then make them again with 'pumpwright bucket papers'; the record itself is safe in "
                            + kept.record());
        }
    }
}
