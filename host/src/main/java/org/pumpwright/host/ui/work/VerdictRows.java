package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.grade.ComplaintAnswer.Answer;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.record.RunRecord;

/** What stands behind a verdict, as lines of a list. Thread-safe. */
final class VerdictRows {
    /** The expanded uncertainty is this many standard uncertainties (JCGM 100, 6.2.1), about 95 % coverage. */
    private static final double COVERAGE_FACTOR = 2;

    private VerdictRows() {}

    static Mark mark(Verdict verdict) {
        return switch (verdict) {
            case PASS -> Mark.GOOD;
            case FAIL -> Mark.BAD;
            case INCONCLUSIVE -> Mark.WATCH;
            case INVALID, NOT_TESTED -> Mark.UNKNOWN;
        };
    }

    /** Why: the reasons, then what was judged. */
    static List<Row> why(RunRecord run) {
        Grade grade = run.grade();
        List<Row> rows = new ArrayList<>();
        for (String reason : grade.reasons()) {
            rows.add(new Row(Word.of("ui.verdict.reason"), mark(grade.verdict()), Stored.sentence(reason), Word.NONE));
        }
        if (grade.verdict() != Verdict.INVALID) {
            grade.features().stream().filter(FeatureJudgement::judged).forEach(each -> rows.add(feature(each)));
        }
        return rows;
    }

    private static Row feature(FeatureJudgement judged) {
        Mark mark = judged.failed() ? Mark.BAD : judged.near() ? Mark.WATCH : Mark.GOOD;
        Word name = judged.feature()
                .place()
                .filter(place -> judged.feature().quantity() != Feature.Kind.READING)
                .map(place -> Word.of(
                        "ui.verdict." + judged.feature().quantity().name().toLowerCase(Locale.ROOT),
                        place.duty().print()))
                .orElseGet(() -> Stored.sentence(judged.feature().words()));
        Word decision =
                Word.of("ui.verdict.decision." + judged.decision().name().toLowerCase(Locale.ROOT));
        return new Row(name, mark, Word.of("ui.verdict.figure", figures(judged), range(judged), decision), Word.NONE);
    }

    private static Word figures(FeatureJudgement judged) {
        double expanded = COVERAGE_FACTOR * judged.measured().standardUncertainty();
        return Word.of(
                "ui.verdict.with_uncertainty", value(judged, judged.measured().value()), value(judged, expanded));
    }

    private static Word range(FeatureJudgement judged) {
        boolean low = judged.limits().hasLow();
        boolean high = judged.limits().hasHigh();
        if (low && high) {
            return Word.of(
                    "ui.verdict.between",
                    value(judged, judged.limits().low()),
                    value(judged, judged.limits().high()));
        }
        if (low) {
            return Word.of("ui.verdict.at_least", value(judged, judged.limits().low()));
        }
        return high
                ? Word.of("ui.verdict.at_most", value(judged, judged.limits().high()))
                : Word.NONE;
    }

    private static Word value(FeatureJudgement judged, double si) {
        return switch (judged.feature().quantity()) {
            case FLOW -> Word.of((Word.Measured) new FlowRate(si)::print);
            case MOTOR_AMPS -> Word.asIs(String.format(Locale.ROOT, "%.2f A", si));
            case READING -> Word.asIs(String.format(Locale.ROOT, "%.3g", si));
        };
    }

    /** What next: the next test, whether the complaint is explained, likely causes, the stand. */
    static List<Row> next(RunRecord run) {
        Grade grade = run.grade();
        List<Row> rows = new ArrayList<>();
        if (!grade.nextTest().isBlank()) {
            rows.add(
                    new Row(Word.of("ui.verdict.next_test"), Mark.WATCH, Stored.sentence(grade.nextTest()), Word.NONE));
        } else if (grade.verdict() == Verdict.PASS) {
            rows.add(new Row(
                    Word.of("ui.verdict.next_test"), Mark.GOOD, Word.of("ui.verdict.next_test.pass"), Word.NONE));
        }
        run.intake().complaint().ifPresent(word -> rows.add(complaint(run, word)));
        if (grade.verdict() != Verdict.INVALID) {
            int place = 1;
            for (Cause cause : grade.causes()) {
                rows.add(cause(cause, place++));
            }
        }
        rows.addAll(checks(grade));
        return rows;
    }

    private static Row complaint(RunRecord run, String word) {
        Answer answer = run.grade().explains().answer();
        Mark mark = switch (answer) {
            case YES -> Mark.GOOD;
            case PARTLY -> Mark.WATCH;
            case NO -> Mark.BAD;
            case NOT_ATTEMPTED -> Mark.UNKNOWN;
        };
        Word said = Word.of("ui.complaint." + word.replace('-', '_'));
        Word name = Word.of(
                "ui.verdict.explains",
                said,
                Word.of("ui.verdict.explains." + answer.name().toLowerCase(Locale.ROOT)));
        return new Row(name, mark, Stored.sentence(run.grade().explains().why()), Word.NONE);
    }

    private static Row cause(Cause cause, int place) {
        return new Row(
                Word.of("ui.verdict.cause", place, Stored.sentence(cause.name())),
                Mark.UNKNOWN,
                Stored.sentence(cause.because()),
                Word.of("ui.verdict.to_tell", Stored.sentence(cause.nextTest())));
    }

    private static List<Row> checks(Grade grade) {
        List<Row> rows = new ArrayList<>();
        long failed = grade.standChecks().stream().filter(check -> !check.ok()).count();
        rows.add(new Row(
                Word.of("ui.verdict.checks"),
                failed == 0 ? Mark.GOOD : Mark.BAD,
                Word.of(
                        "ui.verdict.checks.hold",
                        grade.standChecks().size() - failed,
                        grade.standChecks().size()),
                Word.NONE));
        for (StandCheck check : grade.standChecks()) {
            if (!check.ok()) {
                rows.add(new Row(
                        Stored.sentence(check.name()),
                        Mark.BAD,
                        Stored.sentence(check.finding()),
                        Stored.sentence(check.remedy())));
            }
        }
        return rows;
    }

    /** What gave a simulated fault away: the reasons, then the causes that were thought of. */
    static List<Row> giveaway(RunRecord run) {
        Verdict verdict = run.grade().verdict();
        List<Row> rows = new ArrayList<>();
        Word said = Word.of("verdict." + verdict.name().toLowerCase(Locale.ROOT));
        rows.add(new Row(Word.of("ui.practice.verdict"), mark(verdict), said, Word.NONE));
        rows.addAll(why(run));
        int place = 1;
        for (Cause cause : run.grade().causes()) {
            rows.add(cause(cause, place++));
        }
        run.grade().standChecks().stream()
                .filter(check -> !check.ok())
                .map(check ->
                        new Row(Stored.sentence(check.name()), Mark.BAD, Stored.sentence(check.finding()), Word.NONE))
                .forEach(rows::add);
        return rows;
    }
}
