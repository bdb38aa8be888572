package org.pumpwright.host.report;

import java.util.List;
import java.util.Locale;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;

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
        head(page, run);
        verdict(page, run);
        reasons(page, run.grade());
        new TextTable(page, units).add(run);
        causes(page, run.grade());
        page.blank().wrapped("NEXT: ", Words.next(run));
        Words.complaint(run).ifPresent(complaint -> page.wrapped("", complaint));
        LimitTable limits = new LimitTable(run, units);
        if (!limits.isEmpty() && Words.speaksOfTheUnit(run.grade().verdict())) {
            limits.addTo(page);
        }
        FindingTable findings = new FindingTable(run, units);
        if (!findings.isEmpty()) {
            findings.addTo(page);
        }
        standChecks(page, run.grade());
        Numbers behind = new Numbers(run, units);
        if (numbers && !behind.isEmpty()) {
            behind.addTo(page);
        }
        foot(page, run);
        return page.toString();
    }

    private static void head(TextPage page, RunRecord run) {
        if (run.subject().practice()) {
            page.rule('*').line("*** " + Words.PRACTICE).rule('*');
        }
        if (Words.manual(run)) {
            page.rule('*').line("*** " + Words.MANUAL).rule('*');
        }
        page.wrapped(
                "Unit    ",
                run.subject().modelTitle() + ", serial "
                        + Words.given(run.subject().serial()));
        page.wrapped(
                "Test    ",
                Words.startedAt(run) + ", technician "
                        + Words.given(run.subject().technician()));
        page.wrapped("Record  ", run.id() + ", " + Words.runs(run));
    }

    private static void verdict(TextPage page, RunRecord run) {
        Grade grade = run.grade();
        String word = Words.verdict(grade.verdict());
        String edge = "+" + "=".repeat(word.length() + 6) + "+";
        page.blank().line(edge);
        page.line("|   " + word + "   |  " + grade.verdict().words());
        page.line(edge);
        Words.reservations(run).forEach(reservation -> page.wrapped("  ! ", reservation));
        if (grade.verdict() == Verdict.INVALID) {
            page.wrapped("", Words.NOTHING_SAID);
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

    private static void foot(TextPage page, RunRecord run) {
        page.blank();
        page.wrapped("Curve   ", Words.curve(run));
        if (Words.speaksOfTheUnit(run.grade().verdict())) {
            page.wrapped("Rule    ", Words.given(run.grade().rule()));
        }
        page.wrapped("Rules   ", run.rules().orElse("none of the shop for this kind of unit"));
        page.wrapped("Plan    ", run.plan() + ", " + Words.length(run) + ", " + Words.conditions(run));
        page.wrapped("Stand   ", run.stand().title() + ", board " + Words.board(run));
        page.wrapped("Program ", run.software());
        page.blank().wrapped("", Words.HOSES).wrapped("", Words.WARRANTY);
        if (run.subject().practice()) {
            page.line("*** " + Words.PRACTICE);
        }
    }
}
