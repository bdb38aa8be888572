package org.pumpwright.host.report.bucket;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Locale;
import java.util.Map;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.report.AsciiText;
import org.pumpwright.host.report.draw.Tag;

/**
 * The label that goes on the meter: K per US gallon and per litre with the units spelled out, range, fluid, date, number, and a
 * square code with the same in one line. It never bears a due date. Thread-safe.
 */
public final class KLabel {
    private static final String STYLE = BucketHtmlReport.load("label.css");
    private static final int QUIET_ZONE = 2;
    private static final int HASH_FIGURES = 12;

    private KLabel() {}

    /** The label as one small HTML page, 90 mm by 50 mm. */
    public static String html(BucketRecord record) {
        Tag head = Tag.of("head")
                .add(Tag.of("meta").set("charset", "utf-8"))
                .add(Tag.withText("title", "K label " + record.id()))
                .add(Tag.style(STYLE));
        Tag words = Tag.of("div", "words")
                .add(Tag.withText("p", meter(record)).set("class", "meter"))
                .add(Tag.of("p", "k")
                        .add(Tag.withText("b", "K " + perGallon(record)))
                        .text(" pulses / US gallon"))
                .add(Tag.of("p", "k")
                        .add(Tag.withText("b", "K " + perLitre(record)))
                        .text(" pulses / litre"))
                .add(Tag.withText("p", uncertainty(record)))
                .add(Tag.withText("p", range(record)))
                .add(Tag.withText("p", fluid(record)))
                .add(Tag.withText("p", day(record)), Tag.withText("p", number(record)));
        Tag label = Tag.of("main").add(words, square(code(record)));
        if (record.practice()) {
            label.add(Tag.withText("p", "PRACTICE - NOT A REAL METER").set("class", "practice"));
        }
        if (!record.result().accepted()) {
            label.add(Tag.withText("p", "NOT ACCEPTED - SEE REPORT").set("class", "practice"));
        }
        return "<!DOCTYPE html>\n"
                + Tag.of("html").set("lang", "en").add(head, Tag.of("body").add(label));
    }

    /** The label as lines of ASCII text. */
    public static String text(BucketRecord record) {
        StringBuilder out = new StringBuilder(512);
        for (String line : new String[] {
            meter(record),
            "K " + perGallon(record) + " pulses / US gallon",
            "K " + perLitre(record) + " pulses / litre",
            uncertainty(record),
            range(record),
            fluid(record),
            day(record),
            number(record),
            record.practice() ? "PRACTICE - NOT A REAL METER" : "",
            record.result().accepted() ? "" : "NOT ACCEPTED - SEE REPORT"
        }) {
            if (!line.isBlank()) {
                out.append(AsciiText.of(line)).append('\n');
            }
        }
        return out.toString();
    }

    /** What the square code says, in one line. */
    public static String code(BucketRecord record) {
        return AsciiText.of(String.format(
                Locale.ROOT,
                "PUMPWRIGHT-K/1;no=%s;meter=%s;k_us_gal=%s;k_litre=%s;u_pct=%s;date=%s;sha256=%s",
                record.id(),
                record.meter().serial().replace(';', ','),
                perGallon(record),
                perLitre(record),
                Figures.percent(record.result().single().relativeExpandedUncertainty()),
                record.job().performed(),
                record.source()
                        .sha256()
                        .substring(
                                0,
                                Math.min(HASH_FIGURES, record.source().sha256().length()))));
    }

    private static String meter(BucketRecord record) {
        return "Meter " + record.meter().serial();
    }

    private static String perGallon(BucketRecord record) {
        return Figures.perUsGallon(record.result().single());
    }

    private static String perLitre(BucketRecord record) {
        return Figures.perLitre(record.result().single());
    }

    private static String uncertainty(BucketRecord record) {
        return "U " + Figures.percent(record.result().single().relativeExpandedUncertainty())
                + " % as calibrated (k = "
                + Figures.factor(record.result().single().coverageFactor()) + ")";
    }

    private static String range(BucketRecord record) {
        return Figures.range(record.result().lowest(), record.result().highest());
    }

    private static String fluid(BucketRecord record) {
        return record.method().fluid();
    }

    private static String day(BucketRecord record) {
        return record.job().performed() + ", " + record.job().technician();
    }

    private static String number(BucketRecord record) {
        return "No. " + record.id();
    }

    private static Tag square(String code) {
        try {
            BitMatrix bits = new QRCodeWriter()
                    .encode(
                            code,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M,
                                    EncodeHintType.MARGIN,
                                    QUIET_ZONE));
            StringBuilder path = new StringBuilder();
            for (int y = 0; y < bits.getHeight(); y++) {
                for (int x = 0; x < bits.getWidth(); x++) {
                    if (bits.get(x, y)) {
                        path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                    }
                }
            }
            return Tag.of("svg")
                    .set("viewBox", "0 0 " + bits.getWidth() + " " + bits.getHeight())
                    .set("shape-rendering", "crispEdges")
                    .set("role", "img")
                    .set("aria-label", "square code")
                    .add(Tag.of("path").set("d", path.toString()));
        } catch (WriterException e) {
            throw new IllegalStateException("the square code can't hold " + code.length() + " characters", e);
        }
    }
}
