package org.pumpwright.host.report;

import java.util.List;
import java.util.Locale;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;

/** What the steps of a plan have read, as a table of the page and as lines of text. Thread-safe. */
final class FindingTable {
    private static final int LONGEST_NAME = 50;

    private final FindingPrinter printer;
    private final Interpreter in;
    private final List<Finding> findings;

    FindingTable(RunRecord run, UnitSystem units, Interpreter in) {
        printer = new FindingPrinter(units, in);
        this.in = in;
        findings = run.grade().findings();
    }

    boolean isEmpty() {
        return findings.isEmpty();
    }

    Tag draw() {
        Tag head = Tag.of("tr")
                .add(
                        word("th", in.say("steps.step")),
                        word("th", in.say("steps.reading")),
                        Tag.withText("th", in.say("steps.value")),
                        Tag.withText("th", in.say("steps.uncertainty")),
                        word("th", in.say("steps.unit")),
                        word("th", in.say("steps.note")));
        Tag body = Tag.of("tbody");
        String before = "";
        for (Finding finding : findings) {
            body.add(row(finding, !finding.step().equals(before)));
            before = finding.step();
        }
        return Tag.of("section", "steps")
                .add(
                        Tag.withText("h2", in.say("steps.title")),
                        Tag.of("table", "findings").add(Tag.of("thead").add(head), body),
                        Tag.withText("p", in.say("steps.footnote")).set("class", "small"));
    }

    private Tag row(Finding finding, boolean first) {
        FindingPrinter.Printed printed = printer.print(finding);
        Tag row = Tag.of("tr", first ? "first" : "more")
                .add(
                        word("td", first ? in.stored(finding.step()) : "").set("class", "words step"),
                        word("td", in.stored(finding.name())));
        if (finding.outcome() instanceof Finding.Word) {
            row.add(word("td", printed.value()).set("class", "words value").set("colspan", "3"));
        } else {
            row.add(
                    Tag.withText("td", printed.value()).set("class", "value"),
                    Tag.withText("td", "± " + printed.uncertainty()),
                    word("td", printed.unit()));
        }
        return row.add(Tag.withText("td", in.stored(finding.note())).set("class", "words note"));
    }

    private static Tag word(String element, String text) {
        return Tag.withText(element, text).set("class", "words");
    }

    void addTo(TextPage page) {
        page.blank().line(in.say("steps.title") + "; judged are only those that have a limit (+- U: k = 2)");
        String before = "";
        for (Finding finding : findings) {
            if (!finding.step().equals(before)) {
                page.wrapped("  ", finding.step());
                before = finding.step();
            }
            page.wrapped("    " + padded(finding.name()), outcome(finding));
            if (!finding.note().isBlank()) {
                page.wrapped("        ", finding.note());
            }
        }
    }

    private String outcome(Finding finding) {
        FindingPrinter.Printed printed = printer.print(finding);
        return finding.outcome() instanceof Finding.Word
                ? printed.value()
                : printed.value() + " +- " + printed.uncertainty() + " " + printed.unit();
    }

    /** Names of findings are the program's own and short; a longer one moves its figure on. */
    private static String padded(String name) {
        String ascii = AsciiText.of(name);
        return String.format(Locale.ROOT, "%-38s ", ascii.substring(0, Math.min(LONGEST_NAME, ascii.length())));
    }
}
