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

/**
 * A run as one HTML page for the technician, with nothing outside the file: for the screen, and for one sheet of Letter or
 * A4 that can be read without colour. The paper of an invalid run is a ticket for the stand and says nothing of the unit.
 * Thread-safe.
 */
public final class HtmlReport {
    private static final String STYLE = load("page.css");
    private static final String FOOTNOTE =
            "V eff.: mean volts at the motor. From mean: deviation from the healthy mean."
                    + " U: expanded uncertainty, k = 2, about 95 %. In brackets: information, not judged.";

    private HtmlReport() {}

    /** The page; write it as UTF-8. */
    public static String page(RunRecord run, UnitSystem units) {
        boolean invalid = run.grade().verdict() == Verdict.INVALID;
        String title = invalid ? "Stand ticket" : "Acceptance test";
        Tag head = Tag.of("head")
                .add(Tag.of("meta").set("charset", "utf-8"))
                .add(Tag.of("meta").set("name", "viewport").set("content", "width=device-width, initial-scale=1"))
                .add(Tag.withText(
                        "title",
                        Words.verdict(run.grade().verdict()) + ": "
                                + run.subject().modelTitle() + ", serial "
                                + Words.given(run.subject().serial())))
                .add(Tag.style(STYLE));
        Tag sheet = Tag.of("main").add(header(run, title));
        if (run.subject().practice()) {
            sheet.add(Tag.withText("p", Words.PRACTICE).set("class", "practice"));
        }
        if (Words.manual(run)) {
            sheet.add(Tag.withText("p", Words.MANUAL).set("class", "practice"));
        }
        sheet.add(HtmlBlocks.verdict(run), HtmlBlocks.unit(run));
        if (invalid) {
            sheet.add(Tag.withText("p", Words.NOTHING_SAID).set("class", "nothing-said"));
        }
        sheet.add(invalid ? standFirst(run, units) : unitFirst(run, units));
        if (run.grade().verdict() != Verdict.NOT_TESTED) {
            sheet.add(findings(run, units));
        }
        sheet.add(HtmlBlocks.complaint(run));
        sheet.add(HtmlBlocks.identity(run), HtmlBlocks.foot(run));
        Numbers numbers = new Numbers(run, units);
        if (!numbers.isEmpty()) {
            sheet.add(numbers.draw());
        }
        Tag html = Tag.of("html").set("lang", "en").add(head, Tag.of("body").add(sheet));
        return "<!DOCTYPE html>\n" + html;
    }

    private static Tag header(RunRecord run, String title) {
        return Tag.of("header")
                .add(Tag.withText("span", "Pumpwright"))
                .add(Tag.withText("b", title))
                .add(Tag.withText("span", "record " + run.id()));
    }

    private static List<Tag> unitFirst(RunRecord run, UnitSystem units) {
        Tag reasons = HtmlBlocks.reasons(run.grade());
        Tag next = HtmlBlocks.next(run);
        Tag checks = HtmlBlocks.standChecks(run.grade());
        if (run.grade().verdict() == Verdict.NOT_TESTED) {
            // There is no verdict: what was read is what the run was made for.
            List<Tag> blocks = new ArrayList<>(List.of(reasons, measured(run, units)));
            blocks.addAll(findings(run, units));
            blocks.addAll(List.of(next, checks.set("class", "checks wide")));
            return blocks;
        }
        if (run.grade().causes().isEmpty()) {
            return List.of(reasons, measured(run, units), next, checks.set("class", "checks wide"));
        }
        Tag left = Tag.of("div").add(next, HtmlBlocks.causes(run.grade()));
        return List.of(reasons, measured(run, units), Tag.of("div", "columns").add(left, checks));
    }

    private static List<Tag> findings(RunRecord run, UnitSystem units) {
        FindingTable findings = new FindingTable(run, units);
        return findings.isEmpty() ? List.of() : List.of(findings.draw());
    }

    private static List<Tag> standFirst(RunRecord run, UnitSystem units) {
        return List.of(
                HtmlBlocks.reasons(run.grade()),
                HtmlBlocks.next(run),
                HtmlBlocks.standChecks(run.grade()).set("class", "checks wide"),
                Tag.withText("h2", "Readings, only to find what is wrong with the stand"),
                measured(run, units));
    }

    private static Tag measured(RunRecord run, UnitSystem units) {
        FeaturePrinter printer = new FeaturePrinter(units);
        Tag block = Tag.of("section", "measured");
        List<SweepLine> lines = SweepLine.of(run);
        if (lines.isEmpty() || !Words.speaksOfTheUnit(run.grade().verdict())) {
            return block.add(ReadingTable.draw(run, units)).add(limits(run, units));
        }
        SweepChart flow = new SweepChart(Feature.Kind.FLOW, printer, lines);
        SweepChart amps = new SweepChart(Feature.Kind.MOTOR_AMPS, printer, lines);
        if (!flow.isEmpty() && !amps.isEmpty()) {
            block.add(Tag.of("div", "charts").add(flow.draw(430, 200), amps.draw(290, 200)), Legend.draw());
        }
        block.add(new PointTable(printer, run, lines).draw())
                .add(Tag.withText("p", FOOTNOTE).set("class", "small"));
        return block.add(limits(run, units));
    }

    private static List<Tag> limits(RunRecord run, UnitSystem units) {
        LimitTable limits = new LimitTable(run, units);
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
