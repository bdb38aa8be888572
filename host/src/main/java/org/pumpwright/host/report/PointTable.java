package org.pumpwright.host.report;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;

/** Every value of a run in one table, one row a point; the judged ones in bold. Thread-safe. */
final class PointTable {
    private final FeaturePrinter printer;
    private final Interpreter in;
    private final RunRecord run;
    private final List<SweepLine> lines;

    PointTable(FeaturePrinter printer, RunRecord run, List<SweepLine> lines, Interpreter in) {
        this.in = in;
        this.printer = printer;
        this.run = run;
        this.lines = lines;
    }

    Tag draw() {
        Tag groups = Tag.of("tr").add(head(in.say("points.point"), 3));
        Tag columns = Tag.of("tr")
                .add(
                        head(in.say("points.leg"), 1).set("class", "words"),
                        head(in.say("points.drive"), 1),
                        head(in.say("points.volts"), 1));
        for (Feature.Kind kind : SweepLine.KINDS) {
            groups.add(
                    head(in.stored(kind.words()) + ", " + printer.unit(kind), 4).set("class", "group"));
            columns.add(
                    head(in.say("points.measured"), 1).set("class", "group"),
                    head(in.say("points.healthy"), 1),
                    head(in.say("points.from_mean"), 1),
                    head(in.say("points.result"), 1).set("class", "words"));
        }
        Tag body = Tag.of("tbody");
        lines.forEach(line -> body.add(row(line)));
        return Tag.of("table", "points").add(Tag.of("thead").add(groups, columns), body);
    }

    private Tag row(SweepLine line) {
        Tag row = Tag.of("tr", line.judged() ? "judged" : "shown");
        row.add(
                cell(line.point().map(new Words(in)::leg).orElse("-"), "words"),
                cell(line.duty().print(), ""),
                cell(printer.volts(line.effectiveVolts()), ""));
        for (Feature.Kind kind : SweepLine.KINDS) {
            row.add(cells(line.feature(kind), kind));
        }
        return row;
    }

    private List<Tag> cells(Optional<FeatureJudgement> found, Feature.Kind kind) {
        if (found.isEmpty()) {
            return List.of(cell("-", "group"), cell("", ""), cell("", ""), cell("", "words"));
        }
        FeatureJudgement feature = found.get();
        return List.of(
                cell(printer.number(kind, feature.measured().value()), "group"),
                cell(printer.limits(feature), ""),
                cell(printer.fromMean(feature, "±"), ""),
                cell(printer.decision(feature, run.grade().verdict()), "words " + resultClass(feature)));
    }

    private static String resultClass(FeatureJudgement feature) {
        if (feature.judged() && feature.failed()) {
            return "fail";
        }
        return feature.judged() && feature.near() ? "near" : "";
    }

    private static Tag head(String text, int columns) {
        return Tag.withText("th", text).set("colspan", Integer.toString(columns));
    }

    private static Tag cell(String text, String styleClass) {
        return Tag.withText("td", text).set("class", styleClass);
    }
}
