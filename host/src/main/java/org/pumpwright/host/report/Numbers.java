package org.pumpwright.host.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.grade.BudgetTerm;
import org.pumpwright.host.grade.Correction;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;

/**
 * Every number behind a verdict: what was read, what it was corrected by, what its uncertainty is made of, and file,
 * version and line of each limit and guard. For whoever doubts a verdict, not for the bench. Thread-safe.
 */
final class Numbers {
    private final FeaturePrinter printer;
    private final Interpreter in;
    private final List<FeatureJudgement> features;

    Numbers(RunRecord run, UnitSystem units, Interpreter in) {
        printer = new FeaturePrinter(units, in);
        this.in = in;
        features = Words.speaksOfTheUnit(run.grade().verdict())
                ? run.grade().features().stream()
                        .filter(feature -> feature.judged() || !feature.remark().isEmpty())
                        .toList()
                : List.of();
    }

    boolean isEmpty() {
        return features.isEmpty();
    }

    Tag draw() {
        Tag pairs = Tag.of("table");
        for (int i = 0; i < features.size(); i += 2) {
            Tag row = Tag.of("tr");
            features.subList(i, Math.min(i + 2, features.size()))
                    .forEach(feature -> row.add(Tag.of("td").add(block(feature))));
            pairs.add(row);
        }
        return Tag.of("section", "numbers")
                .add(
                        Tag.withText("h2", in.say("numbers.title")),
                        pairs,
                        Tag.withText("p", in.say("numbers.footnote")).set("class", "small"));
    }

    private List<Tag> block(FeatureJudgement feature) {
        Tag list = Tag.of("ul");
        lines(feature).forEach(line -> list.add(Tag.withText("li", line)));
        return List.of(Tag.withText("h3", heading(feature)), list);
    }

    void addTo(TextPage page) {
        page.blank().line(in.say("numbers.title"));
        for (FeatureJudgement feature : features) {
            page.wrapped("  ", heading(feature));
            lines(feature).forEach(line -> page.wrapped("    - ", line));
        }
        page.wrapped("  ", in.say("numbers.footnote"));
    }

    private String heading(FeatureJudgement feature) {
        return in.stored(feature.feature().words()) + " - "
                + in.stored(feature.limits().set());
    }

    private List<String> lines(FeatureJudgement feature) {
        List<String> lines = new ArrayList<>();
        lines.add(in.say(
                "numbers.read",
                value(feature, feature.raw()),
                value(feature, feature.measured().value()),
                fine(feature, feature.measured().standardUncertainty())));
        lines.add(in.say(
                "numbers.limits",
                printer.limits(feature),
                printer.unit(feature.feature().unit()),
                in.stored(feature.limits().source().words())));
        lines.add(in.say(
                "numbers.guard",
                String.format(Locale.ROOT, "%.3f", feature.guard().factor()),
                fine(feature, feature.guard().width()),
                in.stored(feature.guard().source().words())));
        if (!feature.budget().isEmpty()) {
            lines.add(in.say(
                    "numbers.budget",
                    String.join(
                            "; ",
                            feature.budget().stream()
                                    .map(term -> part(feature, term))
                                    .toList())));
        }
        feature.corrections().forEach(correction -> lines.add(correction(feature, correction)));
        if (!feature.remark().isEmpty()) {
            lines.add(in.say("numbers.remark", in.stored(feature.remark())));
        }
        return lines;
    }

    private String part(FeatureJudgement feature, BudgetTerm term) {
        return in.stored(term.name()) + " " + fine(feature, term.standardUncertainty())
                + (term.through().isEmpty() ? "" : " " + in.say("numbers.shared"));
    }

    private String correction(FeatureJudgement feature, Correction correction) {
        String size = correction.size() == 0 ? "0" : fine(feature, correction.size());
        return in.say("numbers.correction", in.stored(correction.name()), size)
                + (correction.applied() || correction.size() == 0 ? "" : in.say("numbers.not_made"))
                + (correction.note().isEmpty() ? "" : "; " + in.stored(correction.note()));
    }

    private String value(FeatureJudgement feature, double si) {
        FindingUnit unit = feature.feature().unit();
        return printer.number(unit, si) + " " + printer.unit(unit);
    }

    /** Two places more than a value has: parts of an uncertainty are small. */
    private String fine(FeatureJudgement feature, double si) {
        FindingUnit unit = feature.feature().unit();
        return printer.fine(unit, si) + " " + printer.unit(unit);
    }
}
