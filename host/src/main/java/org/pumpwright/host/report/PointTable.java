package org.pumpwright.host.report;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;

/** Every value of a run in one table, one row a point; the judged ones in bold. Thread-safe. */
final class PointTable {
    private final FeaturePrinter printer;
    private final RunRecord run;
    private final List<SweepLine> lines;

    PointTable(FeaturePrinter printer, RunRecord run, List<SweepLine> lines) {
        this.printer = printer;
        this.run = run;
        this.lines = lines;
    }

    Tag draw() {
        Tag groups = Tag.of("tr").add(head("point", 3));
        Tag columns = Tag.of("tr").add(head("leg", 1).set("class", "words"), head("drive", 1), head("V eff.", 1));
        for (Feature.Kind kind : SweepLine.KINDS) {
            groups.add(head(kind.words() + ", " + printer.unit(kind), 4).set("class", "group"));
            columns.add(
                    head("measured", 1).set("class", "group"),
                    head("healthy range", 1),
                    head("from mean ± U, %", 1),
                    head("result", 1).set("class", "words"));
        }
        Tag body = Tag.of("tbody");
        lines.forEach(line -> body.add(row(line)));
        return Tag.of("table", "points").add(Tag.of("thead").add(groups, columns), body);
    }

    private Tag row(SweepLine line) {
        Tag row = Tag.of("tr", line.judged() ? "judged" : "shown");
        row.add(
                cell(line.point().map(Words::leg).orElse("-"), "words"),
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
