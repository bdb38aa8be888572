package org.pumpwright.host.report.retest;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Blocks;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.text.Texts;

/** Every judged feature before and after, and whether it moved by more than runs differ by chance. Thread-safe. */
final class ChangeTable {
    private final Retest retest;
    private final RunSpread spread;
    private final Texts texts;
    private final FeatureWords words;

    /** The table; a spread of another curve than that of both runs counts as not known. */
    ChangeTable(Retest retest, RunSpread spread, FeatureWords words, Texts texts) {
        this.retest = retest;
        this.spread = retest.after()
                .curve()
                .filter(curve -> retest.sameCurve() && curve.label().equals(spread.curve()))
                .map(curve -> spread)
                .orElse(RunSpread.NOT_KNOWN);
        this.words = words;
        this.texts = texts;
    }

    Tag draw() {
        List<Change> changes = retest.changes();
        if (changes.isEmpty()) {
            return Blocks.words("notice", texts.say("retest.nothing_judged"));
        }
        Tag body = Tag.of("tbody");
        changes.forEach(change -> body.add(row(change)));
        List<String> head = List.of(
                texts.say("retest.column.feature"),
                texts.say("retest.column.before"),
                texts.say("retest.column.after"),
                texts.say("retest.column.change"),
                texts.say("retest.column.uncertainty"),
                texts.say("retest.column.limit"),
                texts.say("retest.column.moved"));
        return Blocks.table(1, head, body);
    }

    private Tag row(Change change) {
        boolean compared = retest.speaksOfTheUnit();
        Change.Moved moved = compared ? change.moved(spread) : Change.Moved.NOT_KNOWN;
        String sizes = compared
                ? change.size().map(size -> size(change, size.value(), true)).orElse("-")
                : "-";
        String expanded = compared && change.expandedUncertainty().isPresent()
                ? size(change, change.expandedUncertainty().getAsDouble(), false)
                : "-";
        String limit = change.limit(spread).isPresent()
                ? size(change, change.limit(spread).getAsDouble(), false)
                : texts.say("sheet.not_known");
        return Tag.of("tr")
                .add(
                        Blocks.cell("words strong", words.name(change.feature())),
                        Blocks.cell("figure-cell", judged(change.before(), retest.before())),
                        Blocks.cell("figure-cell", judged(change.after(), retest.after())),
                        Blocks.cell("strong figure-cell", sizes),
                        Blocks.cell("figure-cell", expanded),
                        Blocks.cell("figure-cell", limit),
                        Blocks.cell(
                                style(moved),
                                texts.say("retest.moved." + moved.name().toLowerCase(Locale.ROOT))));
    }

    private static String style(Change.Moved moved) {
        return switch (moved) {
            case YES -> "reverse";
            case NO -> "strong";
            case NOT_KNOWN -> "";
        };
    }

    private String judged(Optional<FeatureJudgement> found, RunRecord run) {
        if (found.isEmpty()) {
            return texts.say("retest.not_measured");
        }
        FeatureJudgement judged = found.get();
        String value = words.value(judged.feature().unit(), judged.measured().value());
        return Retest.speaks(run.grade().verdict())
                ? value + ", " + words.decision(judged, run.grade().verdict())
                : value;
    }

    private String size(Change change, double size, boolean signed) {
        if (change.ofTheMean()) {
            return signed ? FeatureWords.signedPercent(size) : FeatureWords.percent(size);
        }
        String printed = words.value(change.feature().unit(), size);
        return signed && size > 0 ? "+" + printed : printed;
    }

    /** What the figures are, and where the spread comes from; nothing where nothing is compared. */
    List<Tag> footnote() {
        return retest.speaksOfTheUnit() && !retest.changes().isEmpty()
                ? List.of(Blocks.words("small", note()))
                : List.of();
    }

    private String note() {
        String uncertainty = texts.say("retest.note.uncertainty");
        if (!retest.sameCurve()) {
            return uncertainty + " " + texts.say("retest.note.two_curves");
        }
        return spread.curve().isEmpty()
                ? uncertainty + " " + texts.say("retest.note.spread_not_known")
                : uncertainty + " " + texts.say("retest.note.spread", spread.curve());
    }
}
