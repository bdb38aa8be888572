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

/**
 * Every number behind a verdict: what was read, what it was corrected by, what its uncertainty is made of, and file,
 * version and line of each limit and guard. For whoever doubts a verdict, not for the bench. Thread-safe.
 */
final class Numbers {
    static final String TITLE = "The numbers behind the verdict";
    private static final String FOOTNOTE = "u: standard uncertainty. The guard is a factor times u. Parts of u add in"
            + " quadrature; what features have in common, as the meter's K, is the same error in all of them.";

    private final FeaturePrinter printer;
    private final List<FeatureJudgement> features;

    Numbers(RunRecord run, UnitSystem units) {
        printer = new FeaturePrinter(units);
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
        Tag section = Tag.of("section", "numbers").add(Tag.withText("h2", TITLE));
        for (FeatureJudgement feature : features) {
            Tag list = Tag.of("ul");
            lines(feature).forEach(line -> list.add(Tag.withText("li", line)));
            section.add(Tag.withText("h3", heading(feature)), list);
        }
        return section.add(Tag.withText("p", FOOTNOTE).set("class", "small"));
    }

    void addTo(TextPage page) {
        page.blank().line(TITLE);
        for (FeatureJudgement feature : features) {
            page.wrapped("  ", heading(feature));
            lines(feature).forEach(line -> page.wrapped("    - ", line));
        }
        page.wrapped("  ", FOOTNOTE);
    }

    private static String heading(FeatureJudgement feature) {
        return feature.feature().words() + " - " + feature.limits().set();
    }

    private List<String> lines(FeatureJudgement feature) {
        List<String> lines = new ArrayList<>();
        lines.add("read " + value(feature, feature.raw()) + ", corrected "
                + value(feature, feature.measured().value()) + ", u "
                + fine(feature, feature.measured().standardUncertainty()));
        lines.add("limits " + printer.limits(feature) + " "
                + printer.unit(feature.feature().unit()) + ": "
                + feature.limits().source().words());
        lines.add(String.format(Locale.ROOT, "guard %.3f u = ", feature.guard().factor())
                + fine(feature, feature.guard().width()) + ": "
                + feature.guard().source().words());
        if (!feature.budget().isEmpty()) {
            lines.add("u is made of "
                    + String.join(
                            "; ",
                            feature.budget().stream()
                                    .map(term -> part(feature, term))
                                    .toList()));
        }
        feature.corrections().forEach(correction -> lines.add(correction(feature, correction)));
        if (!feature.remark().isEmpty()) {
            lines.add("for information only: " + feature.remark());
        }
        return lines;
    }

    private String part(FeatureJudgement feature, BudgetTerm term) {
        return term.name() + " " + fine(feature, term.standardUncertainty())
                + (term.through().isEmpty() ? "" : " (shared)");
    }

    private String correction(FeatureJudgement feature, Correction correction) {
        String size = correction.size() == 0 ? "0" : fine(feature, correction.size());
        return "correction for " + correction.name() + ": " + size
                + (correction.applied() || correction.size() == 0 ? "" : ", told and not made")
                + (correction.note().isEmpty() ? "" : "; " + correction.note());
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
