package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.claim.Correction;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Observation;
import org.pumpwright.host.claim.Sentence;
import org.pumpwright.host.claim.Waiver;

/** How a claim stands, as lines of lists, in neutral words. Thread-safe. */
public final class ClaimRows {
    private ClaimRows() {}

    /** What stands: decision, finding, runs, cautions, what to look at, what is missing, what was seen, coverage, corrections. */
    static List<Row> of(ClaimView view) {
        ClaimFile file = view.file();
        List<Row> rows = new ArrayList<>();
        file.decision().ifPresent(decision -> rows.add(decision(decision)));
        file.finding().ifPresent(finding -> rows.add(finding(finding)));
        view.runs().forEach(run -> rows.add(run(run)));
        boolean clean = file.intake().decontamination().confirmed();
        if (!clean) {
            cautions(view, rows);
        }
        flags(file, rows);
        file.missing().stream().filter(Missing::beforeTheTest).forEach(item -> rows.add(missing(item)));
        file.waivers().forEach(waiver -> rows.add(waiver(waiver)));
        file.observations().forEach(seen -> rows.add(observation(seen)));
        coverage(view, rows);
        file.missing().stream().filter(item -> !item.beforeTheTest()).forEach(item -> rows.add(missing(item)));
        file.corrections().forEach(each -> rows.add(correction(each)));
        if (clean) {
            cautions(view, rows);
        }
        return rows;
    }

    /** The same for whoever decides: coverage, finding, what was seen and gone past, flags. */
    static List<Row> forDecision(ClaimView view) {
        ClaimFile file = view.file();
        List<Row> rows = new ArrayList<>();
        file.finding().ifPresent(finding -> rows.add(finding(finding)));
        flags(file, rows);
        coverage(view, rows);
        file.waivers().forEach(waiver -> rows.add(waiver(waiver)));
        file.observations().forEach(seen -> rows.add(observation(seen)));
        return rows;
    }

    /** The neutral categories; those that do not agree with the runs on record say so. */
    public static List<Row> categories(ClaimView view) {
        List<Row> rows = new ArrayList<>();
        for (Category category : Category.values()) {
            boolean agrees = view.fit().agreeing().contains(category);
            rows.add(new Row(
                    Word.asIs(category.name()),
                    agrees ? Mark.GOOD : Mark.UNKNOWN,
                    Word.of(category.key()),
                    agrees
                            ? Word.NONE
                            : Word.of(
                                    category == Category.C7 ? "ui.claim.category.planter" : "ui.claim.category.not")));
        }
        return rows;
    }

    /** What to know of the product; it comes early while the unit may still hold some. */
    private static void cautions(ClaimView view, List<Row> rows) {
        view.cautions()
                .forEach(caution ->
                        rows.add(new Row(Word.of("ui.claim.caution"), Mark.WATCH, Word.stored(caution), Word.NONE)));
    }

    private static void flags(ClaimFile file, List<Row> rows) {
        file.flags()
                .forEach(flag ->
                        rows.add(new Row(Word.of("ui.claim.flag"), Mark.WATCH, said(flag.sentence()), Word.NONE)));
    }

    private static void coverage(ClaimView view, List<Row> rows) {
        view.reviewed().coverage().ifPresent(coverage -> coverage.lines().forEach(line -> rows.add(covered(line))));
    }

    private static Row missing(Missing item) {
        return new Row(
                Word.of(item.key()),
                item.beforeTheTest() ? Mark.BAD : Mark.UNKNOWN,
                Word.of(item.beforeTheTest() ? "ui.claim.missing.before" : "ui.claim.missing.yet"),
                Word.NONE);
    }

    private static Row covered(CoverageAssessment.Line line) {
        return new Row(
                Word.of(
                        "ui.claim.rule",
                        Word.of("claim.rule." + line.rule()),
                        Word.of(line.holds().key())),
                switch (line.holds()) {
                    case YES -> Mark.GOOD;
                    case NO -> Mark.BAD;
                    case UNKNOWN -> Mark.UNKNOWN;
                },
                Word.of("ui.claim.because", said(line.because())),
                Word.of("ui.claim.rule.where", line.where()));
    }

    private static Row run(ClaimRun run) {
        return new Row(
                Word.of("ui.claim.run", VerdictWords.word(run.verdict())),
                VerdictWords.mark(run.verdict()),
                Word.of("ui.claim.run.line", run.startedAt().toLocalDate(), run.plan(), run.technician()),
                Word.NONE);
    }

    private static Row finding(Finding finding) {
        return new Row(
                Word.of("ui.claim.finding", finding.category()),
                Mark.GOOD,
                Word.of(finding.category().key()),
                Word.of("ui.claim.signed", finding.signer(), finding.at().toLocalDate()));
    }

    private static Row decision(CoverageDecision decision) {
        return new Row(
                Word.of("ui.claim.decision", Word.of(decision.outcome().key())),
                Mark.GOOD,
                Word.asIs(decision.reason()),
                Word.of(
                        "ui.claim.signed",
                        decision.signer()
                                + decision.second().map(second -> ", " + second).orElse(""),
                        decision.at().toLocalDate()));
    }

    private static Row observation(Observation seen) {
        return new Row(
                Word.of("ui.claim.seen", Word.of(seen.seen().key())),
                Mark.UNKNOWN,
                Word.asIs(seen.words()),
                Word.of("ui.claim.by", seen.person(), seen.at().toLocalDate()));
    }

    private static Row waiver(Waiver waiver) {
        return new Row(
                Word.of(waiver.step().key()),
                Mark.WATCH,
                Word.asIs(waiver.reason()),
                Word.of("ui.claim.answers", waiver.person(), waiver.at().toLocalDate()));
    }

    private static Row correction(Correction each) {
        return new Row(
                Word.of("ui.claim.corrected"),
                Mark.UNKNOWN,
                Word.asIs(each.reason()),
                each.changes().isEmpty()
                        ? Word.of("ui.claim.corrected.on", each.at().toLocalDate())
                        : Word.of("ui.claim.corrected.what", each.at().toLocalDate(), each.changes()));
    }

    static Word said(Sentence sentence) {
        return Word.of(sentence.key(), sentence.values().toArray());
    }
}
