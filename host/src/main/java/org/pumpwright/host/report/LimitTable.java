package org.pumpwright.host.report;

import java.util.List;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;

/** What was held against limits other than the healthy range: limits of function and of single readings. Thread-safe. */
final class LimitTable {
    private final FeaturePrinter printer;
    private final Interpreter in;
    private final Verdict verdict;
    private final List<FeatureJudgement> features;

    LimitTable(RunRecord run, UnitSystem units, Interpreter in) {
        printer = new FeaturePrinter(units, in);
        this.in = in;
        verdict = run.grade().verdict();
        features = run.grade().features().stream()
                .filter(feature -> feature.limits().centre().isEmpty())
                .toList();
    }

    boolean isEmpty() {
        return features.isEmpty();
    }

    Tag draw() {
        Tag head = Tag.of("tr")
                .add(
                        words("th", in.say("limits.what")),
                        Tag.withText("th", in.say("limits.measured")),
                        Tag.withText("th", in.say("limits.limits")),
                        words("th", in.say("limits.set")),
                        words("th", in.say("limits.result")));
        Tag body = Tag.of("tbody");
        for (FeatureJudgement feature : features) {
            String unit = printer.unit(feature.feature().unit());
            body.add(Tag.of("tr")
                    .add(
                            words("td", in.stored(feature.feature().words())),
                            Tag.withText("td", printer.withUncertainty(feature, "±") + " " + unit),
                            Tag.withText("td", printer.limits(feature) + " " + unit),
                            words("td", in.stored(feature.limits().set())),
                            words("td", printer.decision(feature, verdict))));
        }
        return Tag.of("section", "limits")
                .add(
                        Tag.withText("h2", in.say("limits.title")),
                        Tag.of("table", "findings").add(Tag.of("thead").add(head), body));
    }

    private static Tag words(String element, String text) {
        return Tag.withText(element, text).set("class", "words");
    }

    void addTo(TextPage page) {
        page.blank().line(in.say("limits.title"));
        for (FeatureJudgement feature : features) {
            String unit = printer.unit(feature.feature().unit());
            page.wrapped(
                    "  " + feature.feature().words() + ": ",
                    printer.withUncertainty(feature, "+-") + " " + unit + ", " + printer.limits(feature) + " " + unit
                            + " (" + feature.limits().set() + "): " + printer.decision(feature, verdict));
        }
    }
}
