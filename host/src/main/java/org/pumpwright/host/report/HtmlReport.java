package org.pumpwright.host.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/**
 * A run as one HTML page for the technician, with nothing outside the file: for the screen, and for one sheet of Letter or
 * A4 that can be read without colour. The paper of an invalid run is a ticket for the stand and says nothing of the unit.
 * Thread-safe.
 */
public final class HtmlReport {
    /** So many points of a sweep find room on the first sheet beside all else. */
    private static final int MOST_POINTS = 10;

    private static final String STYLE = load("page.css");

    private final RunRecord run;
    private final UnitSystem units;
    private final Interpreter in;
    private final Words words;
    private final HtmlBlocks blocks;

    private HtmlReport(RunRecord run, UnitSystem units, Interpreter in) {
        this.run = run;
        this.units = units;
        this.in = in;
        words = new Words(in);
        blocks = new HtmlBlocks(run, in);
    }

    /** The page in English; write it as UTF-8. */
    public static String page(RunRecord run, UnitSystem units) {
        return page(run, units, Texts.in(Language.EN));
    }

    /** The page in the language of the texts; write it as UTF-8. What of the record has no words in it stands in English. */
    public static String page(RunRecord run, UnitSystem units, Texts texts) {
        return page(run, units, new Interpreter(texts));
    }

    /** The same; the interpreter tells afterwards what of the record it left in English. */
    public static String page(RunRecord run, UnitSystem units, Interpreter in) {
        return new HtmlReport(run, units, in).page();
    }

    private String page() {
        Tag head = Tag.of("head")
                .add(Tag.of("meta").set("charset", "utf-8"))
                .add(Tag.of("meta").set("name", "viewport").set("content", "width=device-width, initial-scale=1"))
                .add(Tag.withText(
                        "title",
                        in.say(
                                "technician.page",
                                words.verdict(run.grade().verdict()),
                                run.subject().modelTitle(),
                                words.given(run.subject().serial()))))
                .add(Tag.style(STYLE));
        Tag html = Tag.of("html")
                .set("lang", in.language().code())
                .add(head, Tag.of("body").add(sheet()));
        return "<!DOCTYPE html>\n" + html;
    }

    private Tag sheet() {
        boolean invalid = run.grade().verdict() == Verdict.INVALID;
        Tag sheet = Tag.of("main").add(header(invalid ? "technician.ticket" : "technician.test"));
        if (run.subject().practice()) {
            sheet.add(Tag.withText("p", words.practice()).set("class", "practice"));
        }
        if (Words.manual(run)) {
            sheet.add(Tag.withText("p", words.byHand()).set("class", "practice"));
        }
        sheet.add(blocks.verdict(), blocks.unit());
        if (invalid) {
            sheet.add(Tag.withText("p", words.nothingSaid()).set("class", "nothing-said"));
        }
        sheet.add(invalid ? standFirst() : unitFirst());
        return sheet.add(blocks.complaint()).add(blocks.foot(), behind()).add(blocks.leftInEnglish());
    }

    private static List<SweepLine> judged(List<SweepLine> lines) {
        return lines.stream().filter(SweepLine::judged).toList();
    }

    /** Every point of a long sweep, of which the first sheet shows the judged ones. */
    private List<Tag> allPoints() {
        List<SweepLine> lines = SweepLine.of(run);
        if (lines.size() <= MOST_POINTS || !Words.speaksOfTheUnit(run.grade().verdict())) {
            return List.of();
        }
        return List.of(
                Tag.withText("h2", in.say("points.all")),
                new PointTable(new FeaturePrinter(units, in), run, lines, in).draw());
    }

    /** What is looked up, not read: with figures it has a sheet of its own, so that what a person acts on and signs is one. */
    private Tag behind() {
        List<Tag> figures = new ArrayList<>();
        if (run.grade().verdict() != Verdict.NOT_TESTED) {
            figures.addAll(allPoints());
            figures.addAll(findings());
        }
        Numbers numbers = new Numbers(run, units, in);
        Tag behind = Tag.of("div", figures.isEmpty() && numbers.isEmpty() ? "under" : "behind")
                .add(figures)
                .add(blocks.identity());
        return numbers.isEmpty() ? behind : behind.add(numbers.draw());
    }

    private Tag header(String title) {
        return Tag.of("header")
                .add(Tag.withText("span", "Pumpwright"))
                .add(Tag.withText("b", in.say(title)))
                .add(Tag.withText("span", in.say("technician.record_number", run.id())));
    }

    private List<Tag> unitFirst() {
        Tag reasons = blocks.reasons();
        Tag next = blocks.next();
        Tag checks = blocks.standChecks();
        if (run.grade().verdict() == Verdict.NOT_TESTED) {
            // There is no verdict: what was read is what the run was made for.
            List<Tag> parts = new ArrayList<>(List.of(reasons, measured()));
            parts.addAll(findings());
            parts.addAll(List.of(next, checks.set("class", "checks wide")));
            return parts;
        }
        if (run.grade().causes().isEmpty()) {
            return List.of(reasons, measured(), next, checks.set("class", "checks wide"));
        }
        Tag left = Tag.of("div").add(next, blocks.causes());
        return List.of(reasons, measured(), Tag.of("div", "columns").add(left, checks));
    }

    private List<Tag> findings() {
        FindingTable findings = new FindingTable(run, units, in);
        return findings.isEmpty() ? List.of() : List.of(findings.draw());
    }

    private List<Tag> standFirst() {
        return List.of(
                blocks.reasons(),
                blocks.next(),
                blocks.standChecks().set("class", "checks wide"),
                Tag.withText("h2", in.say("technician.readings_of_the_stand")),
                measured());
    }

    private Tag measured() {
        FeaturePrinter printer = new FeaturePrinter(units, in);
        Tag block = Tag.of("section", "measured");
        List<SweepLine> lines = SweepLine.of(run);
        if (lines.isEmpty() || !Words.speaksOfTheUnit(run.grade().verdict())) {
            return block.add(ReadingTable.draw(run, units, in)).add(limits());
        }
        SweepChart flow = new SweepChart(Feature.Kind.FLOW, printer, lines, in);
        SweepChart amps = new SweepChart(Feature.Kind.MOTOR_AMPS, printer, lines, in);
        if (!flow.isEmpty() && !amps.isEmpty()) {
            block.add(Tag.of("div", "charts").add(flow.draw(430, 200), amps.draw(290, 200)), Legend.draw(in));
        }
        block.add(new PointTable(printer, run, lines.size() > MOST_POINTS ? judged(lines) : lines, in).draw())
                .add(Tag.withText("p", in.say("points.footnote")).set("class", "small"));
        return block.add(limits());
    }

    private List<Tag> limits() {
        LimitTable limits = new LimitTable(run, units, in);
        return limits.isEmpty() || !Words.speaksOfTheUnit(run.grade().verdict()) ? List.of() : List.of(limits.draw());
    }

    private static String load(String resource) {
        try (InputStream in = HtmlReport.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program is not whole: " + resource + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
