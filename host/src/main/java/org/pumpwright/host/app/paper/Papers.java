package org.pumpwright.host.app.paper;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Version;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.report.HtmlReport;
import org.pumpwright.host.report.bucket.BucketHtmlReport;
import org.pumpwright.host.report.bucket.KLabel;
import org.pumpwright.host.report.claim.ClerkEvidence;
import org.pumpwright.host.report.claim.ClerkPage;
import org.pumpwright.host.report.claim.CustomerFacts;
import org.pumpwright.host.report.claim.CustomerPage;
import org.pumpwright.host.report.claim.FactoryCase;
import org.pumpwright.host.report.claim.FactoryPage;
import org.pumpwright.host.report.label.TagColour;
import org.pumpwright.host.report.label.TagLabel;
import org.pumpwright.host.report.label.TagSlip;
import org.pumpwright.host.report.pdf.Attachment;
import org.pumpwright.host.report.pdf.Origin;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.report.retest.RetestPage;
import org.pumpwright.host.report.sheet.Amended;
import org.pumpwright.host.text.Texts;

/** Makes papers of what was found. The date on a document is that of what it shows. Thread-safe. */
public final class Papers {
    /** The record of a factory's page, from which names were taken. */
    public static final String WITHOUT_NAMES = "record-without-names.json";

    private final Surroundings around;
    private final Texts texts;
    private final UnitSystem units;
    private final Sheet sheet;

    /**
     * @param around what papers say beside the run
     * @param texts their language
     * @param units their units
     * @param sheet what they are printed on
     */
    public Papers(Surroundings around, Texts texts, UnitSystem units, Sheet sheet) {
        this.around = around;
        this.texts = texts;
        this.units = units;
        this.sheet = sheet;
    }

    /**
     * The paper.
     *
     * @param other the other run, for a retest
     * @throws OrderException when there is no such paper of this; the message says why, and what there is instead
     */
    public Paper of(PaperKind kind, Found found, Optional<Found> other)
            throws OrderException, DataFileException, RunRecordException, StoreException {
        if (found instanceof Found.Bucket bucket) {
            return ofTest(kind, bucket);
        }
        if (!(found instanceof Found.Run run)) {
            throw new OrderException("%s is no run".formatted(found.id()));
        }
        return switch (kind) {
            case TECHNICIAN -> technician(run);
            case CUSTOMER -> customer(run);
            case CLERK -> clerk(run);
            case FACTORY -> factory(run);
            case RETEST -> retest(run, other);
            case LABEL -> label(run);
            case BUCKET ->
                throw new OrderException(
                        "%s is the run of a unit, and page bucket is made of a bucket test. Look for one: pumpwright record find --kind bucket-test."
                                .formatted(found.id()));
        };
    }

    private Paper ofTest(PaperKind kind, Found.Bucket bucket) throws OrderException {
        Origin origin = origin(bucket.test().issuedAt());
        return switch (kind) {
            case BUCKET ->
                new Paper(BucketHtmlReport.page(bucket.test(), units, texts), sheet(), origin, bucket.attachments(""));
            case LABEL -> new Paper(KLabel.html(bucket.test(), texts), Sheet.LABEL, origin, bucket.attachments(""));
            default ->
                throw new OrderException(
                        "%s is a bucket test. Its papers are --page bucket and --page label.".formatted(bucket.id()));
        };
    }

    private Paper technician(Found.Run found) {
        Corrected corrected = Corrected.of(found, texts);
        return paper(found, HtmlReport.page(corrected.run(), units, texts), corrected.sentences());
    }

    private Paper customer(Found.Run found) throws OrderException, StoreException, RunRecordException {
        Corrected corrected = Corrected.of(found, texts);
        RunRecord run = corrected.run();
        if (run.grade().verdict() == Verdict.INVALID) {
            throw invalid(found, "there is no customer's page");
        }
        Optional<ClaimFile> claim = around.claim(run);
        CustomerFacts facts = new CustomerFacts(
                around.shop(),
                run.intake().claim(),
                claim.map(file -> file.intake().complaint().words())
                        .filter(words -> !words.isBlank())
                        .or(() -> run.intake().complaint()),
                Optional.empty(),
                around.calibration(run),
                List.of());
        return paper(found, CustomerPage.html(run, facts, units, texts), corrected.sentences());
    }

    private Paper clerk(Found.Run found) throws OrderException, DataFileException, StoreException {
        Corrected corrected = Corrected.of(found, texts);
        String claim = corrected
                .run()
                .intake()
                .claim()
                .orElseThrow(() -> new OrderException(
                        "run %s was made for no claim, so there is no clerk's page. If it belongs to one: pumpwright record amend %s --claim NUMBER --by NAME --reason TEXT."
                                .formatted(found.id(), found.id())));
        return clerk(around.review(claim), Optional.of(found));
    }

    /**
     * The clerk's page of a claim.
     *
     * @param run the run that the stand's health is told by; its record goes into the document
     */
    public Paper clerk(ClaimReview.Reviewed claim, Optional<Found.Run> run) throws OrderException {
        Optional<Corrected> corrected = run.map(found -> Corrected.of(found, texts));
        ClaimFile file = claim.file();
        ClerkEvidence evidence = new ClerkEvidence(
                around.shop(),
                file,
                corrected.map(Corrected::run),
                claim.coverage(),
                Optional.empty(),
                around.thumbnails(file),
                claim.entries().stream()
                        .map(entry -> new ClerkEvidence.Item(entry.id(), entry.digest()))
                        .toList());
        OffsetDateTime latest = claim.entries().stream()
                .map(Entry::at)
                .max(OffsetDateTime::compareTo)
                .orElse(file.intake().received());
        return new Paper(
                Amended.on(
                        ClerkPage.html(evidence, texts),
                        corrected.map(Corrected::sentences).orElse(List.of())),
                sheet(),
                origin(latest),
                run.map(found -> found.attachments("")).orElse(List.of()));
    }

    /** Nobody's name is in it: also not in the record that goes with it, which for that is not the one that was signed. */
    private Paper factory(Found.Run found) throws StoreException {
        Corrected corrected = Corrected.of(found, texts);
        RunRecord run = corrected.run();
        FactoryCase unit = FactoryCase.of(run, around.claim(run), found.digest());
        List<Attachment> attachments = new ArrayList<>();
        attachments.add(new Attachment(
                WITHOUT_NAMES,
                RunContent.of(Corrected.withoutNames(run)).getBytes(StandardCharsets.UTF_8),
                "The record without names, as canonical JSON; content_sha256 in entry.json is of the whole one"));
        attachments.addAll(found.seal(""));
        return new Paper(
                Amended.on(FactoryPage.html(unit, units, texts), corrected.nameless()),
                sheet(),
                new Origin("", run.startedAt(), Version.text()),
                attachments);
    }

    private Paper retest(Found.Run found, Optional<Found> other) throws OrderException, DataFileException {
        if (!(other.orElse(null) instanceof Found.Run before)) {
            throw new OrderException(
                    "a retest is made of two runs. Give the other one too: --with ID. Look for it: pumpwright record find --serial '%s'."
                            .formatted(found.run().subject().serial()));
        }
        return retest(found, before);
    }

    /**
     * Two runs of one unit over each other.
     *
     * @throws OrderException when they are not of one unit
     */
    public Paper retest(Found.Run one, Found.Run other) throws OrderException, DataFileException {
        boolean inOrder = one.run()
                .startedAt()
                .toInstant()
                .isAfter(other.run().startedAt().toInstant());
        Found.Run after = inOrder ? one : other;
        Found.Run before = inOrder ? other : one;
        Corrected first = Corrected.of(before, texts);
        Corrected second = Corrected.of(after, texts);
        List<String> sentences = new ArrayList<>();
        first.sentences().forEach(line -> sentences.add(before.id() + ": " + line));
        second.sentences().forEach(line -> sentences.add(after.id() + ": " + line));
        List<Attachment> attachments = new ArrayList<>(after.attachments(""));
        attachments.addAll(before.attachments("before-"));
        try {
            String html =
                    RetestPage.html(first.run(), second.run(), around.spread(first.run(), second.run()), units, texts);
            return new Paper(
                    Amended.on(html, sentences), sheet(), origin(after.run().startedAt()), attachments);
        } catch (IllegalArgumentException e) {
            throw new OrderException("%s. Give two runs of one unit.".formatted(e.getMessage()));
        }
    }

    private Paper label(Found.Run found) throws OrderException, StoreException {
        Corrected corrected = Corrected.of(found, texts);
        RunRecord run = corrected.run();
        if (run.grade().verdict() == Verdict.INVALID) {
            throw invalid(found, "there is no label");
        }
        TagSlip slip = new TagSlip(
                run,
                colour(run).orElseGet(() -> TagColour.of(run.grade().verdict())),
                false,
                !corrected.sentences().isEmpty());
        boolean alone = sheet == Sheet.LABEL;
        return new Paper(
                alone ? TagLabel.html(slip, texts) : TagLabel.sheet(List.of(slip), texts),
                sheet,
                origin(run.startedAt()),
                found.attachments(""));
    }

    /** The colour that the desk has given. */
    private Optional<TagColour> colour(RunRecord run) throws StoreException {
        return around.claim(run)
                .flatMap(file -> file.whereabouts().colour())
                .map(word -> word.toUpperCase(Locale.ROOT))
                .flatMap(word -> List.of(TagColour.values()).stream()
                        .filter(colour -> colour.name().equals(word))
                        .findFirst());
    }

    private static OrderException invalid(Found.Run found, String what) {
        return new OrderException(
                "run %s is INVALID: it says nothing of the unit, so %s. The stand's ticket is --page technician; put the stand right and run the test again."
                        .formatted(found.id(), what));
    }

    private Paper paper(Found.Run found, String html, List<String> sentences) {
        return new Paper(
                Amended.on(html, sentences), sheet(), origin(found.run().startedAt()), found.attachments(""));
    }

    /** A whole page does not go on a label. */
    private Sheet sheet() {
        return sheet == Sheet.LABEL ? Sheet.LETTER : sheet;
    }

    private Origin origin(OffsetDateTime at) {
        return new Origin(around.shop().orElse(""), at, Version.text());
    }
}
