package org.pumpwright.host.report;

import java.util.List;
import java.util.Locale;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.text.Interpreter;

/** A run for the technician at the terminal: 80 columns of plain ASCII. Thread-safe. */
public final class TextReport {
    private TextReport() {}

    /** The page without the numbers behind the verdict, lines ending in a line feed. */
    public static String page(RunRecord run, UnitSystem units) {
        return page(run, units, false);
    }

    /**
     * The page, lines ending in a line feed.
     *
     * @param numbers whether the numbers behind the verdict are told: corrections, parts of uncertainties, where limits stand
     */
    public static String page(RunRecord run, UnitSystem units, boolean numbers) {
        TextPage page = new TextPage();
        Interpreter in = Interpreter.english();
        Words words = new Words(in);
        head(page, words, run);
        verdict(page, words, run);
        reasons(page, run.grade());
        new TextTable(page, units, in).add(run);
        causes(page, run.grade());
        page.blank().wrapped("NEXT: ", words.next(run));
        words.complaint(run).ifPresent(complaint -> page.wrapped("", complaint));
        LimitTable limits = new LimitTable(run, units, in);
        if (!limits.isEmpty() && Words.speaksOfTheUnit(run.grade().verdict())) {
            limits.addTo(page);
        }
        FindingTable findings = new FindingTable(run, units, in);
        if (!findings.isEmpty()) {
            findings.addTo(page);
        }
        standChecks(page, run.grade());
        Numbers behind = new Numbers(run, units, in);
        if (numbers && !behind.isEmpty()) {
            behind.addTo(page);
        }
        foot(page, words, run);
        return page.toString();
    }

    private static void head(TextPage page, Words words, RunRecord run) {
        if (run.subject().practice()) {
            page.rule('*').line("*** " + words.practice()).rule('*');
        }
        if (Words.manual(run)) {
            page.rule('*').line("*** " + words.byHand()).rule('*');
        }
        page.wrapped(
                "Unit    ",
                run.subject().modelTitle() + ", serial "
                        + words.given(run.subject().serial()));
        page.wrapped(
                "Test    ",
                Words.startedAt(run) + ", technician "
                        + words.given(run.subject().technician()));
        page.wrapped("Record  ", run.id() + ", " + words.runs(run));
        run.intake().handling().product().ifPresent(said -> page.wrapped("Pumped  ", said));
        words.rinsed(run).ifPresent(said -> page.wrapped("Rinsed  ", said));
    }

    private static void verdict(TextPage page, Words words, RunRecord run) {
        Grade grade = run.grade();
        String word = words.verdict(grade.verdict());
        String edge = "+" + "=".repeat(word.length() + 6) + "+";
        page.blank().line(edge);
        page.line("|   " + word + "   |  " + grade.verdict().words());
        page.line(edge);
        words.reservations(run).forEach(reservation -> page.wrapped("  ! ", reservation));
        if (grade.verdict() == Verdict.INVALID) {
            page.wrapped("", words.nothingSaid());
        }
    }

    private static void reasons(TextPage page, Grade grade) {
        grade.reasons().forEach(reason -> page.wrapped("  - ", reason));
    }

    private static void causes(TextPage page, Grade grade) {
        if (grade.causes().isEmpty() || !Words.speaksOfTheUnit(grade.verdict())) {
            return;
        }
        page.blank().line("Likely causes, the likeliest first");
        int number = 1;
        for (Cause cause : grade.causes()) {
            page.wrapped(String.format(Locale.ROOT, "  %d. ", number++), cause.name() + ": " + cause.because());
            page.wrapped("     To tell: ", cause.nextTest());
        }
    }

    private static void standChecks(TextPage page, Grade grade) {
        List<StandCheck> checks = grade.standChecks();
        long failed = checks.stream().filter(check -> !check.ok()).count();
        page.blank()
                .line(String.format(
                        Locale.ROOT, "Stand and run: %d of %d checks hold", checks.size() - failed, checks.size()));
        for (StandCheck check : checks) {
            page.wrapped(check.ok() ? "  ok      " : "  NOT OK  ", check.name() + ": " + check.finding());
            if (!check.ok()) {
                page.wrapped("          Do: ", check.remedy());
            }
        }
    }

    private static void foot(TextPage page, Words words, RunRecord run) {
        page.blank();
        page.wrapped("Curve   ", words.curve(run));
        if (Words.speaksOfTheUnit(run.grade().verdict())) {
            page.wrapped("Rule    ", words.rule(run));
        }
        page.wrapped("Rules   ", words.rules(run));
        page.wrapped("Plan    ", run.plan() + ", " + words.length(run) + ", " + words.conditions(run));
        page.wrapped("Stand   ", run.stand().title() + ", board " + words.board(run));
        page.wrapped("Program ", run.software());
        page.blank().wrapped("", words.hoses()).wrapped("", words.warranty());
        if (run.subject().practice()) {
            page.line("*** " + words.practice());
        }
    }
}
