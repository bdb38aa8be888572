package org.pumpwright.host.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.report.HtmlReport;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.report.bucket.BucketHtmlReport;
import org.pumpwright.host.report.bucket.BucketSamples;
import org.pumpwright.host.report.bucket.KLabel;

class PdfPaperTest {
    private static final Origin ORIGIN =
            new Origin("Example & Söhne <shop>", OffsetDateTime.parse("2026-04-02T08:15:30-05:00"), "Pumpwright 0.1.0");
    private static final byte[] RECORD = "{\"id\":\"r-1\",\"ñ\":1}".getBytes(StandardCharsets.UTF_8);
    private static final Path FOLDER = Path.of("target", "papers");

    private static byte[] paper(String html, Sheet sheet) {
        return PdfPaper.of(html, sheet, ORIGIN, Optional.of(Attachment.record(RECORD)));
    }

    private static int sheets(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    private static String words(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static void check(String name, String html, int mostSheets) throws Exception {
        Files.createDirectories(FOLDER);
        for (Sheet sheet : List.of(Sheet.LETTER, Sheet.A4)) {
            byte[] pdf = paper(html, sheet);
            Files.write(FOLDER.resolve(name + "-" + sheet.styleClass() + ".pdf"), pdf);
            assertThat(Conformance.failures(pdf)).as(name + " on " + sheet).isEmpty();
            assertThat(sheets(pdf)).as(name + " on " + sheet).isLessThanOrEqualTo(mostSheets);
        }
    }

    private static String technician(org.pumpwright.host.record.RunRecord run) {
        return HtmlReport.page(run, UnitSystem.US);
    }

    @Test
    void theTechniciansPageIsPdfAOnOneSheetAndOneMoreForTheNumbers() throws Exception {
        check("pass", technician(SampleRecords.pass()), 2);
        check("fail", technician(SampleRecords.fail()), 2);
        check("crowded", technician(SampleRecords.crowded()), 2);
        check("traced", technician(SampleRecords.traced()), 2);
        check("inconclusive", technician(SampleRecords.inconclusive()), 2);
    }

    @Test
    void whatHasNoNumbersIsPdfAOnOneSheet() throws Exception {
        check("invalid", technician(SampleRecords.invalid()), 1);
        check("stopped", technician(SampleRecords.stoppedByBoard()), 1);
        check("no-curve", technician(SampleRecords.withoutCurve()), 1);
        check("readings", technician(SampleRecords.readings()), 1);
    }

    @Test
    void theCalibrationReportIsPdfAOnAsManySheetsAsItSays() throws Exception {
        for (var record : List.of(BucketSamples.plain(), BucketSamples.hostile())) {
            String html = BucketHtmlReport.page(record, UnitSystem.US);
            byte[] pdf = paper(html, Sheet.A4);
            check("bucket", html, sheets(pdf));
            assertThat(words(pdf)).contains("Page 1 of " + sheets(pdf));
        }
    }

    @Test
    void theMetersLabelIsPdfAOnOneLabel() throws Exception {
        byte[] pdf = paper(KLabel.html(BucketSamples.hostile()), Sheet.LABEL);
        Files.createDirectories(FOLDER);
        Files.write(FOLDER.resolve("k-label.pdf"), pdf);
        assertThat(Conformance.failures(pdf)).isEmpty();
        assertThat(sheets(pdf)).isEqualTo(1);
    }

    @Test
    void theRecordComesOutAsItWentIn() throws IOException {
        try (PDDocument document = Loader.loadPDF(paper(technician(SampleRecords.pass()), Sheet.LETTER))) {
            PDComplexFileSpecification file = document.getDocumentCatalog()
                    .getNames()
                    .getEmbeddedFiles()
                    .getNames()
                    .get(Attachment.RECORD);
            assertThat(file.getEmbeddedFile().toByteArray()).isEqualTo(RECORD);
            assertThat(file.getEmbeddedFile().getSubtype()).isEqualTo("application/json");
            assertThat(file.getCOSObject().getNameAsString(COSName.getPDFName("AFRelationship")))
                    .isEqualTo("Source");
        }
    }

    @Test
    void everyFontIsInTheDocument() throws IOException {
        try (PDDocument document = Loader.loadPDF(paper(technician(SampleRecords.fail()), Sheet.A4))) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                    assertThat(page.getResources().getFont(name).getName()).contains("DejaVu");
                }
            }
        }
    }

    @Test
    void theDocumentSaysWhatItIsAndWhoMadeIt() throws IOException {
        try (PDDocument document = Loader.loadPDF(paper(technician(SampleRecords.pass()), Sheet.LETTER))) {
            assertThat(document.getDocumentInformation().getTitle()).contains("D-10442");
            assertThat(document.getDocumentInformation().getAuthor()).isEqualTo("Example & Söhne <shop>");
            assertThat(document.getDocumentInformation().getCreator()).isEqualTo("Pumpwright 0.1.0");
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo(ORIGIN.date().toInstant());
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8))
                    .contains("Example &amp; Söhne &lt;shop&gt;")
                    .contains("<xmp:CreateDate>2026-04-02T08:15:30-05:00</xmp:CreateDate>");
        }
    }

    @Test
    void theWordsOfChartsStayWordsAndNoSignIsMissing() throws IOException {
        String page = technician(SampleRecords.fail()).replace("<h2>", "<h2>áéíóúñ¿¡ ✓✗▸▲▼ ± ≤ ≥ µ Ω ° − ");
        assertThat(words(paper(page, Sheet.LETTER)))
                .contains("effective volts at the unit, V", "50 % LOW", "áéíóúñ¿¡ ✓✗▸▲▼ ± ≤ ≥ µ Ω ° −");
    }

    @Test
    void theSamePaperIsTheSameBytesAlsoWhenManyAreMadeAtOnce() throws Exception {
        String page = technician(SampleRecords.fail());
        byte[] first = paper(page, Sheet.LETTER);
        ExecutorService workers = Executors.newFixedThreadPool(3);
        try {
            List<Callable<byte[]>> jobs = new ArrayList<>();
            for (int i = 0; i < 9; i++) {
                jobs.add(() -> paper(page, Sheet.LETTER));
            }
            for (Future<byte[]> made : workers.invokeAll(jobs)) {
                assertThat(made.get()).isEqualTo(first);
            }
        } finally {
            workers.shutdownNow();
        }
        assertThat(paper(technician(SampleRecords.pass()), Sheet.LETTER)).isNotEqualTo(first);
    }

    @Test
    void aPageThatIsNotWellFormedIsRefused() {
        assertThatThrownBy(() -> paper("<html><head><title>x</title></head><body><p></body></html>", Sheet.A4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("the page is not well formed");
    }

    @Test
    void aDrawingItDoesNotKnowIsRefusedByName() {
        String page =
                "<html><head><title>x</title></head><body><svg viewBox=\"0 0 9 9\"><ellipse/></svg></body></html>";
        assertThatThrownBy(() -> paper(page, Sheet.A4)).hasMessage("<ellipse> can't be drawn onto a document");
    }

    @Test
    void anAttachmentsNameIsFitForAnyMachine() {
        assertThatThrownBy(() -> new Attachment("../r.json", RECORD, ""))
                .hasMessage("'../r.json' can't name an attachment: 1 to 64 of A-Z a-z 0-9 . _ - are needed");
    }

    /** Against the platform's own sRGB, which Java's colour numbers stand for. */
    @Test
    void theColourProfileIsSrgb() {
        ICC_ColorSpace space = new ICC_ColorSpace(ICC_Profile.getInstance(StandardRgb.profile()));
        for (float[] colour : new float[][] {
            {0, 0, 0}, {1, 1, 1}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0.83f, 0.37f, 0}, {0.2f, 0.5f, 0.8f}
        }) {
            float[] platform = space.toRGB(colour);
            for (int i = 0; i < 3; i++) {
                assertThat(platform[i]).isBetween(colour[i] - 0.012f, colour[i] + 0.012f);
            }
        }
    }

    @Test
    void whatOnlyBrowsersKnowIsLeftOut() {
        assertThat(PrintStyle.of("a{b:c} /* } */ @supports (x: y) { d { e: f } } @media (max-width: 9rem) { g{h:i} }"
                        + "@media print { j{k:l} }"))
                .isEqualToIgnoringWhitespace("a{b:c} @media print { j{k:l} }");
    }
}
