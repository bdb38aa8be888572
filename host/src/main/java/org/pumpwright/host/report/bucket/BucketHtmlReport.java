package org.pumpwright.host.report.bucket;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.report.bucket.Block.Blanks;
import org.pumpwright.host.report.bucket.Block.Chart;
import org.pumpwright.host.report.bucket.Block.FactList;
import org.pumpwright.host.report.bucket.Block.Headline;
import org.pumpwright.host.report.bucket.Block.Paragraphs;
import org.pumpwright.host.report.bucket.Block.Table;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/**
 * The calibration report as one HTML file with nothing outside it: sheets for Letter or A4, each with the report's number and
 * {@code page x of y}, legible without colour. Thread-safe.
 */
public final class BucketHtmlReport {
    private static final String STYLE = load("report.css");

    private BucketHtmlReport() {}

    /** The page in English; write it as UTF-8. */
    public static String page(BucketRecord record, UnitSystem units) {
        return page(record, units, Texts.in(Language.EN));
    }

    /** The page in the language of the texts; write it as UTF-8. What a person typed stays as it is. */
    public static String page(BucketRecord record, UnitSystem units, Texts texts) {
        return page(record, units, new Interpreter(texts));
    }

    static String page(BucketRecord record, UnitSystem units, Interpreter in) {
        List<List<Block>> sheets = new ReportContent(record, units, in).sheets();
        Tag head = Tag.of("head")
                .add(Tag.of("meta").set("charset", "utf-8"))
                .add(Tag.of("meta").set("name", "viewport").set("content", "width=device-width, initial-scale=1"))
                .add(Tag.withText("title", in.typed(record.shop().title()) + " " + record.id()))
                .add(Tag.style(STYLE));
        Tag body = Tag.of("body");
        for (int i = 0; i < sheets.size(); i++) {
            body.add(sheet(record, units, in, sheets.get(i), i + 1, sheets.size()));
        }
        return "<!DOCTYPE html>\n"
                + Tag.of("html")
                        .set("lang", in.language().code())
                        .set("class", "own-feet")
                        .add(head, body);
    }

    private static Tag sheet(
            BucketRecord record, UnitSystem units, Interpreter in, List<Block> blocks, int number, int of) {
        Tag sheet = Tag.of("main")
                .add(Tag.of("header")
                        .add(Tag.withText("span", record.shop().name()))
                        .add(Tag.withText(
                                number == 1 ? "h1" : "b", in.typed(record.shop().title())))
                        .add(Tag.withText("span", in.say("bucket.number", record.id()))));
        if (record.practice()) {
            sheet.add(Tag.withText("p", in.say("bucket.practice")).set("class", "practice"));
        }
        blocks.forEach(block -> sheet.add(draw(block, record, units, in)));
        if (number == of) {
            sheet.add(Tag.withText("p", in.say("bucket.end")).set("class", "end"));
        }
        return sheet.add(Tag.of("footer")
                .add(Tag.withText("span", in.say("bucket.number", record.id())))
                .add(Tag.withText("span", in.say("bucket.page", number, of))));
    }

    private static Tag draw(Block block, BucketRecord record, UnitSystem units, Interpreter in) {
        if (block instanceof FactList facts) {
            return facts(facts);
        }
        if (block instanceof Table table) {
            return table(table);
        }
        if (block instanceof Paragraphs words) {
            return words(words);
        }
        if (block instanceof Headline headline) {
            return headline(headline);
        }
        if (block instanceof Chart) {
            return KChart.draw(record, units, in);
        }
        Tag blanks = Tag.of("section", "blanks");
        ((Blanks) block).words().forEach(word -> blanks.add(Tag.withText("p", word)));
        return blanks;
    }

    private static Tag titled(String title) {
        Tag section = Tag.of("section");
        return title.isBlank() ? section : section.add(Tag.withText("h2", title));
    }

    private static Tag facts(FactList facts) {
        Tag list = Tag.of("dl");
        for (Map.Entry<String, String> fact : facts.facts()) {
            list.add(Tag.of("div").add(Tag.withText("dt", fact.getKey()), Tag.withText("dd", fact.getValue())));
        }
        return titled(facts.title()).add(list);
    }

    private static Tag table(Table table) {
        Tag drawn = Tag.of("table").add(row("th", table.head(), table.words()));
        table.rows().forEach(row -> drawn.add(row("td", row, table.words())));
        Tag section = titled(table.title()).add(drawn);
        return table.note().isBlank()
                ? section
                : section.add(Tag.withText("p", table.note()).set("class", "small"));
    }

    private static Tag row(String cell, List<String> entries, int words) {
        Tag row = Tag.of("tr");
        for (int i = 0; i < entries.size(); i++) {
            Tag entry = Tag.withText(cell, entries.get(i));
            row.add(i < words ? entry.set("class", "words") : entry);
        }
        return row;
    }

    private static Tag words(Paragraphs words) {
        Tag section = titled(words.title());
        words.sentences().forEach(sentence -> section.add(Tag.withText("p", sentence)));
        return words.boxed() ? section.set("class", "boxed") : section;
    }

    private static Tag headline(Headline headline) {
        return Tag.of("section", headline.accepted() ? "headline" : "headline not")
                .add(Tag.withText("p", headline.k()).set("class", "k"))
                .add(Tag.withText("p", headline.uncertainty()))
                .add(Tag.withText("p", headline.range()))
                .add(Tag.withText("p", headline.finding()).set("class", "finding"));
    }

    static String load(String resource) {
        try (InputStream in = BucketHtmlReport.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program is not whole: " + resource + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
