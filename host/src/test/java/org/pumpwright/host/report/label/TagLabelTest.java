package org.pumpwright.host.report.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.report.bucket.BucketSamples;
import org.pumpwright.host.report.bucket.KLabel;
import org.pumpwright.host.report.pdf.Conformance;
import org.pumpwright.host.report.pdf.Origin;
import org.pumpwright.host.report.pdf.PdfPaper;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

class TagLabelTest {
    private static final Origin ORIGIN =
            new Origin("Practice Shop", OffsetDateTime.parse("2026-04-02T08:15:30-05:00"), "Pumpwright 0.1.0");
    private static final int DOTS_PER_INCH = 300;

    private static byte[] pdf(String html, Sheet sheet) {
        return PdfPaper.of(html, sheet, ORIGIN, Optional.empty());
    }

    private static String read(byte[] pdf, BarcodeFormat format) throws IOException, NotFoundException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.RGB);
            int width = image.getWidth();
            int height = image.getHeight();
            int[] dots = image.getRGB(0, 0, width, height, null, 0, width);
            return new MultiFormatReader()
                    .decode(
                            new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, dots))),
                            Map.of(DecodeHintType.POSSIBLE_FORMATS, List.of(format), DecodeHintType.TRY_HARDER, true))
                    .getText();
        }
    }

    private static RunRecord serial(RunRecord run, String serial) {
        RunRecord.Subject was = run.subject();
        return new RunRecord(
                run.id(),
                run.startedAt(),
                run.software(),
                new RunRecord.Subject(was.model(), was.modelTitle(), serial, was.technician(), was.practice()),
                run.stand(),
                run.conditions(),
                run.plan(),
                run.curve(),
                run.ending(),
                run.grade(),
                run.trace(),
                run.intake(),
                run.rules(),
                run.regradedFrom());
    }

    @Test
    void bothCodesReadAgainFromThePrintedLabel() throws Exception {
        for (Language language : Language.values()) {
            for (RunRecord run : List.of(
                    SampleRecords.pass(),
                    SampleRecords.fail(),
                    SampleRecords.inconclusive(),
                    SampleRecords.readings())) {
                TagSlip slip = TagSlip.of(run);
                byte[] pdf = pdf(TagLabel.html(slip, Texts.in(language)), Sheet.LABEL);
                assertThat(read(pdf, BarcodeFormat.QR_CODE)).isEqualTo(slip.code());
                assertThat(read(pdf, BarcodeFormat.CODE_128))
                        .isEqualTo(run.subject().serial());
            }
        }
    }

    @Test
    void barsThatCannotHoldTheSerialHoldTheTest() throws Exception {
        for (String odd : List.of("", "Ñ-17", "a serial that is longer than bars on a label can be")) {
            RunRecord run = serial(SampleRecords.pass(), odd);
            byte[] pdf = pdf(TagLabel.html(TagSlip.of(run), Texts.in(Language.EN)), Sheet.LABEL);
            assertThat(read(pdf, BarcodeFormat.CODE_128)).isEqualTo(run.id());
        }
    }

    @Test
    void theLongestSerialInBarsReads() throws Exception {
        RunRecord run = serial(SampleRecords.pass(), "AB-0123.45_cdefg/678hiJK");
        byte[] pdf = pdf(TagLabel.html(TagSlip.of(run), Texts.in(Language.EN)), Sheet.LABEL);
        assertThat(read(pdf, BarcodeFormat.CODE_128)).isEqualTo("AB-0123.45_cdefg/678hiJK");
    }

    @Test
    void theMetersLabelReadsAgain() throws Exception {
        byte[] pdf = pdf(KLabel.html(BucketSamples.plain()), Sheet.LABEL);
        assertThat(read(pdf, BarcodeFormat.QR_CODE)).isEqualTo(KLabel.code(BucketSamples.plain()));
    }

    @Test
    void labelsArePdfAAloneAndByTheSheet() throws Exception {
        TagSlip hot = new TagSlip(SampleRecords.fail(), TagColour.RED, true, false);
        byte[] one = pdf(TagLabel.html(hot, Texts.in(Language.ES)), Sheet.LABEL);
        byte[] many =
                pdf(TagLabel.sheet(Collections.nCopies(TagLabel.ON_A_SHEET, hot), Texts.in(Language.EN)), Sheet.LETTER);
        Path folder = Files.createDirectories(Path.of("target", "papers"));
        Files.write(folder.resolve("tag-label.pdf"), one);
        Files.write(folder.resolve("tag-labels.pdf"), many);
        assertThat(Conformance.failures(one)).isEmpty();
        assertThat(Conformance.failures(many)).isEmpty();
        for (byte[] pdf : List.of(one, many)) {
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages()).isEqualTo(1);
            }
        }
    }

    @Test
    void theCodeIsOneLineThatNoSerialCanBreak() {
        String code = TagSlip.of(serial(SampleRecords.pass(), "X;no=1\n2")).code();
        assertThat(code)
                .startsWith("PUMPWRIGHT-TAG/1;no=20260402-081530-7f3a;verdict=PASS;model=")
                .endsWith(";tested=2026-04-02;practice=yes")
                .doesNotContain("\n")
                .doesNotContain(";no=1");
    }

    @Test
    void theLabelSaysWhereTheUnitGoesAndThatItIsPractice() {
        String page =
                TagLabel.html(new TagSlip(SampleRecords.fail(), TagColour.WHITE, true, false), Texts.in(Language.EN));
        assertThat(page)
                .contains(
                        "FAIL",
                        "WHITE TAG - TO FACTORY",
                        "HOT - DO NOT TOUCH",
                        "PRACTICE - NOT A REAL UNIT",
                        "not given");
    }

    @Test
    void anInvalidRunGetsNoLabel() {
        assertThatThrownBy(() -> new TagSlip(SampleRecords.invalid(), TagColour.GREEN, false, false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an invalid run says nothing of the unit: it gets a stand ticket, no label");
    }

    @Test
    void moreLabelsThanGoOnASheetAreRefused() {
        TagSlip slip = TagSlip.of(SampleRecords.pass());
        assertThatThrownBy(() -> TagLabel.sheet(Collections.nCopies(11, slip), Texts.in(Language.EN)))
                .hasMessage("11 labels don't go on one sheet: 1 to 10 do");
    }
}
