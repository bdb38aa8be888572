package org.pumpwright.host.report.bucket;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;

/** Report, label and certificate of a bucket test. */
final class BucketReportTest {
    private static final Pattern PIXEL = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1");
    private static final Pattern SIDE = Pattern.compile("viewBox=\"0 0 (\\d+) ");

    /** What ISO/IEC 17025:2017 lists in 7.8.2.1 and 7.8.4.1, in the words of the report. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Calibration report",
                "Practice Shop (invented), 1 Example Road, Exampleville",
                "in the shop",
                "No. K20260302T151500.000Z",
                "Page 1 of 3",
                "Page 3 of 3",
                "End of report",
                "Example farm (invented)",
                "weighed bucket, flying start and finish (weighed-flying v1)",
                "invented meter, serial M-0001",
                "clean",
                "2026-02-27",
                "2026-03-02",
                "not applicable",
                "The results apply to the meter named here, as it was, and to nothing else.",
                "K = 3010.5 pulses per US gallon = 795.29 pulses per litre",
                "Deviations from the method, additions, exclusions",
                "None.",
                "Authorised by:",
                "No result was provided by others.",
                "U = 0.10 % (k = 2.06, about 95 %)",
                "Air temperature",
                "certificate S-2026-11 of 2026-01-20, due 2027-01-20",
                "as found",
                "Conformity: simple acceptance",
                "Opinions and interpretations (not part of the results)",
                "revision 1, takes the place of K20260301T151500.000Z: name corrected",
                "This shop is not accredited for calibration",
                "PRACTICE - invented or simulated figures",
                "NOT ACCEPTED: see what does not hold"
            })
    void theReportHoldsEveryElement(String element) {
        assertThat(BucketHtmlReport.page(BucketSamples.plain(), UnitSystem.US)).contains(element);
        assertThat(BucketTextReport.page(BucketSamples.plain(), UnitSystem.US)
                        .replaceAll("\\s+", " ")
                        .toLowerCase(Locale.ROOT))
                .contains(element.replaceAll("\\s+", " ").toLowerCase(Locale.ROOT));
    }

    @Test
    void noIntervalIsRecommendedUnlessItWasAgreed() {
        assertThat(BucketHtmlReport.page(BucketSamples.plain(), UnitSystem.US)).doesNotContain("Next calibration");
        assertThat(KLabel.html(BucketSamples.plain())).doesNotContain("due");
    }

    @Test
    void aLeftOutRunStandsInTheTableAndAmongTheDeviations() {
        String text = BucketTextReport.page(BucketSamples.hostile(), UnitSystem.US);
        assertThat(text)
                .contains("LEFT OUT: the hose slipped off")
                .contains("Run 5 was left out: the hose slipped off.")
                .contains("4 of 5");
    }

    @Test
    void noNameCanBecomeMarkupOrLeaveTheSheet() {
        String html = BucketHtmlReport.page(BucketSamples.hostile(), UnitSystem.METRIC);
        assertThat(html).contains("M&lt;b&gt;1&lt;/b&gt;").doesNotContain("<b>1</b>", "NaN");
        assertThat(BucketTextReport.page(BucketSamples.hostile(), UnitSystem.METRIC))
                .matches("[\\x20-\\x7E\\n\\f]*")
                .satisfies(text -> assertThat(text.lines()).allMatch(line -> line.length() <= 118));
    }

    @Test
    void theLabelHasBothUnitsSpelledOut() {
        assertThat(KLabel.text(BucketSamples.plain()))
                .contains("K 3010.5 pulses / US gallon\nK 795.29 pulses / litre\n")
                .contains("1.00 to 4.00 gal/min (3.79 to 15.14 L/min)")
                .contains("water, 998.72 kg/m3")
                .contains("NOT ACCEPTED - SEE REPORT");
    }

    @Test
    void theSquareCodeReadsBack() throws Exception {
        BucketRecord record = BucketSamples.plain();
        String html = KLabel.html(record);
        Matcher side = SIDE.matcher(html);
        assertThat(side.find()).isTrue();
        int modules = Integer.parseInt(side.group(1));
        int scale = 4;
        int[] pixels = new int[modules * scale * modules * scale];
        Arrays.fill(pixels, 0xFFFFFF);
        Matcher pixel = PIXEL.matcher(html);
        while (pixel.find()) {
            int x = Integer.parseInt(pixel.group(1)) * scale;
            int y = Integer.parseInt(pixel.group(2)) * scale;
            int end = x + Integer.parseInt(pixel.group(3)) * scale;
            for (int row = y; row < y + scale; row++) {
                Arrays.fill(pixels, row * modules * scale + x, row * modules * scale + end, 0);
            }
        }
        String read = new QRCodeReader()
                .decode(new BinaryBitmap(
                        new HybridBinarizer(new RGBLuminanceSource(modules * scale, modules * scale, pixels))))
                .getText();
        assertThat(read)
                .isEqualTo(KLabel.code(record))
                .startsWith("PUMPWRIGHT-K/1;no=K20260302T151500.000Z;meter=M-0001;k_us_gal=3010.5;k_litre=795.29;");
    }

    /** The schema is that of its publisher, under its own licence, in src/test/resources/dcc; only its documentation is left out. */
    @Test
    void theCertificateKeepsToThePublishedSchema() throws Exception {
        Schema schema = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
                .newSchema(
                        Path.of(getClass().getResource("/dcc/dcc.xsd").toURI()).toFile());
        for (BucketRecord record : new BucketRecord[] {BucketSamples.plain(), BucketSamples.hostile()}) {
            String xml = DccCertificate.xml(record);
            schema.newValidator().validate(new StreamSource(new StringReader(xml)));
            assertThat(xml).contains("<si:coverageFactor>2.06</si:coverageFactor>", "schemaVersion=\"3.2.1\"");
        }
    }
}
