package org.pumpwright.host.ui.work;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.app.record.OnRecord.Seal;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.report.FeaturePrinter;
import org.pumpwright.host.report.retest.Change;
import org.pumpwright.host.report.retest.Retest;
import org.pumpwright.host.report.retest.RunSpread;

/** Runs on record, and what changed between two of them, as lines of a list. Thread-safe. */
final class HistoryRows {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private HistoryRows() {}

    /** By the shop's own clock. */
    static String day(Entry entry) {
        return DAY.format(entry.at());
    }

    static List<Row> found(List<Entry> entries) {
        return entries.stream().map(HistoryRows::found).toList();
    }

    static Row found(Entry entry) {
        Word name = Word.asIs("%s   %s"
                .formatted(
                        entry.finder().serial().orElse("-"),
                        entry.finder().model().orElse("")));
        String claim = entry.finder().claim().orElse("");
        Word line = claim.isEmpty()
                ? Word.of("ui.history.line", VerdictWords.word(entry), day(entry))
                : Word.of("ui.history.line_claim", VerdictWords.word(entry), day(entry), claim);
        return new Row(name, VerdictWords.mark(entry), line, Word.NONE);
    }

    /** What a run says: reasons, causes, next test, and whether its signature holds. */
    static List<Row> of(StoredRun shown) {
        List<Row> rows = new ArrayList<>();
        shown.run().ifPresent(run -> of(run, rows));
        shown.test().ifPresent(test -> of(test, rows));
        rows.add(new Row(
                Word.of("ui.history.seal"),
                switch (shown.seal()) {
                    case HOLDS -> Mark.GOOD;
                    case UNKNOWN_KEY -> Mark.WATCH;
                    case BROKEN -> Mark.BAD;
                },
                Word.of("ui.history.seal." + shown.seal().name().toLowerCase(Locale.ROOT)),
                shown.seal() == Seal.BROKEN ? Word.of("ui.history.seal.broken.do") : Word.NONE));
        return rows;
    }

    private static void of(RunRecord run, List<Row> rows) {
        Mark mark = VerdictWords.mark(run.grade().verdict());
        run.grade()
                .reasons()
                .forEach(reason -> rows.add(new Row(Word.of("ui.history.why"), mark, Word.stored(reason), Word.NONE)));
        run.grade().causes().stream()
                .limit(3)
                .forEach(cause -> rows.add(
                        new Row(Word.of("ui.history.cause"), Mark.WATCH, Word.stored(cause.name()), Word.NONE)));
        rows.add(new Row(
                Word.of("ui.history.by"),
                Mark.UNKNOWN,
                Word.of(
                        "ui.history.by_whom",
                        run.subject().technician(),
                        Word.stored(run.stand().title()),
                        run.plan()),
                Word.NONE));
    }

    private static void of(BucketRecord test, List<Row> rows) {
        BucketRecord.KValue k = test.result().single();
        Mark mark = test.result().accepted() ? Mark.GOOD : Mark.BAD;
        rows.add(new Row(
                Word.of("ui.history.k"),
                mark,
                Word.of(
                        "ui.history.k_value",
                        Word.of((Word.Measured) units -> k(k.pulsesPerM3(), units)),
                        String.format(Locale.ROOT, "%.2f", 100 * k.relativeExpandedUncertainty())),
                test.practice() ? Word.of("ui.history.k_practice") : Word.NONE));
        test.result()
                .checks()
                .forEach(check -> rows.add(new Row(
                        Word.stored(check.name()),
                        check.holds() ? Mark.GOOD : Mark.BAD,
                        Word.stored(check.words()),
                        Word.NONE)));
        rows.add(new Row(
                Word.of("ui.history.by"),
                Mark.UNKNOWN,
                Word.of(
                        "ui.history.by_whom_k",
                        test.job().technician(),
                        test.job().performed()),
                Word.NONE));
    }

    private static String k(double pulsesPerM3, UnitSystem units) {
        KFactor k = new KFactor(pulsesPerM3);
        return units == UnitSystem.US
                ? String.format(Locale.ROOT, "%.1f /gal", k.pulsesPerUsGallon())
                : String.format(Locale.ROOT, "%.2f /L", k.pulsesPerLitre());
    }

    /** What moved between two runs of one unit; what the curve's own spread from run to run explains is marked as such. */
    static List<Row> changes(Retest retest, RunSpread spread) {
        return retest.changes().stream().map(change -> row(change, spread)).toList();
    }

    private static Row row(Change change, RunSpread spread) {
        Change.Moved moved = change.moved(spread);
        Word size = change.size()
                .map(each -> change.ofTheMean()
                        ? Word.asIs(String.format(Locale.ROOT, "%+.1f %%", 100 * each.value()))
                        : value(change.feature().unit(), each.value()))
                .orElse(Word.asIs("-"));
        return new Row(
                Word.stored(change.feature().words()),
                change.after().map(HistoryRows::mark).orElse(Mark.UNKNOWN),
                Word.of("ui.history.change", value(change.before()), value(change.after()), size),
                Word.of("ui.history.moved." + moved.name().toLowerCase(Locale.ROOT)));
    }

    private static Mark mark(FeatureJudgement after) {
        if (!after.judged()) {
            return Mark.UNKNOWN;
        }
        return after.failed() ? Mark.BAD : after.near() ? Mark.WATCH : Mark.GOOD;
    }

    private static Word value(Optional<FeatureJudgement> judged) {
        return judged.map(each -> value(each.feature().unit(), each.measured().value()))
                .orElse(Word.asIs("-"));
    }

    private static Word value(FindingUnit unit, double si) {
        if (unit == FindingUnit.M3_PER_SECOND && si >= 0) {
            return Word.of((Word.Measured) new FlowRate(si)::print);
        }
        return Word.of((Word.Measured) units -> print(unit, si, units));
    }

    private static String print(FindingUnit unit, double si, UnitSystem units) {
        FeaturePrinter printer = new FeaturePrinter(units);
        return (printer.number(unit, si) + " " + printer.unit(unit)).strip();
    }
}
