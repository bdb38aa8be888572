package org.pumpwright.host.report.bucket;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.report.AsciiText;
import org.pumpwright.host.report.draw.SquareCode;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/**
 * The label that goes on the meter: K per US gallon and per litre with the units spelled out, range, fluid, date, number, and a
 * square code with the same in one line. It never bears a due date. Thread-safe.
 */
public final class KLabel {
    private static final String STYLE = BucketHtmlReport.load("label.css");
    private static final int HASH_FIGURES = 12;

    private final BucketRecord record;
    private final Interpreter in;

    private KLabel(BucketRecord record, Interpreter in) {
        this.record = record;
        this.in = in;
    }

    /** The label in English as one small HTML page, 90 mm by 50 mm. */
    public static String html(BucketRecord record) {
        return html(record, Texts.in(Language.EN));
    }

    /** The label in the language of the texts as one small HTML page, 90 mm by 50 mm. */
    public static String html(BucketRecord record, Texts texts) {
        return new KLabel(record, new Interpreter(texts)).html();
    }

    private String html() {
        Tag head = Tag.of("head")
                .add(Tag.of("meta").set("charset", "utf-8"))
                .add(Tag.withText("title", in.say("k_label.title", record.id())))
                .add(Tag.style(STYLE));
        Tag words = Tag.of("div", "words")
                .add(Tag.withText("p", meter()).set("class", "meter"))
                .add(Tag.of("p", "k")
                        .add(Tag.withText("b", "K " + perGallon(record)))
                        .text(" " + in.say("k_label.per_gallon")))
                .add(Tag.of("p", "k")
                        .add(Tag.withText("b", "K " + perLitre(record)))
                        .text(" " + in.say("k_label.per_litre")));
        List.of(uncertainty(), range(), fluid(), day(), number()).forEach(line -> words.add(Tag.withText("p", line)));
        Tag label = Tag.of("main").add(words, SquareCode.draw(code(record), in.say("k_label.code")));
        warnings().forEach(warning -> label.add(Tag.withText("p", warning).set("class", "practice")));
        return "<!DOCTYPE html>\n"
                + Tag.of("html")
                        .set("lang", in.language().code())
                        .add(head, Tag.of("body").add(label));
    }

    /** The label in English as lines of ASCII text. */
    public static String text(BucketRecord record) {
        return text(record, Texts.in(Language.EN));
    }

    /** The label in the language of the texts as lines of ASCII text, its letters without accents. */
    public static String text(BucketRecord record, Texts texts) {
        return new KLabel(record, new Interpreter(texts)).text();
    }

    private String text() {
        List<String> lines = new ArrayList<>(List.of(
                meter(),
                "K " + perGallon(record) + " " + in.say("k_label.per_gallon"),
                "K " + perLitre(record) + " " + in.say("k_label.per_litre"),
                uncertainty(),
                range(),
                fluid(),
                day(),
                number()));
        lines.addAll(warnings());
        return lines.stream()
                .filter(line -> !line.isBlank())
                .map(line -> AsciiText.of(line) + "\n")
                .collect(Collectors.joining());
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        if (record.practice()) {
            warnings.add(in.say("k_label.practice"));
        }
        if (!record.result().accepted()) {
            warnings.add(in.say("k_label.not_accepted"));
        }
        return warnings;
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

    private String meter() {
        return in.say("k_label.meter", record.meter().serial());
    }

    private static String perGallon(BucketRecord record) {
        return Figures.perUsGallon(record.result().single());
    }

    private static String perLitre(BucketRecord record) {
        return Figures.perLitre(record.result().single());
    }

    private String uncertainty() {
        return in.say(
                "k_label.uncertainty",
                Figures.percent(record.result().single().relativeExpandedUncertainty()),
                Figures.factor(record.result().single().coverageFactor()));
    }

    private String range() {
        return new Figures(UnitSystem.US, in)
                .range(record.result().lowest(), record.result().highest());
    }

    private String fluid() {
        return in.typed(record.method().fluid());
    }

    private String day() {
        return record.job().performed() + ", " + record.job().technician();
    }

    private String number() {
        return in.say("bucket.number", record.id());
    }
}
