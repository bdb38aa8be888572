package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

    /** Why: the reasons, then what was judged. */
    static List<Row> why(RunRecord run) {
        Grade grade = run.grade();
        List<Row> rows = new ArrayList<>();
        for (String reason : grade.reasons()) {
            rows.add(new Row(
                    Word.of("ui.verdict.reason"), VerdictWords.mark(grade.verdict()), Word.stored(reason), Word.NONE));
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
                .orElseGet(() -> Word.stored(judged.feature().words()));
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

    /**
     * What next: the next test, likely causes, the stand.
     *
     * @param how the next test is carried out; {@link Word#NONE} until that is known
     */
    static List<Row> next(RunRecord run, Word how) {
        Grade grade = run.grade();
        List<Row> rows = new ArrayList<>();
        if (!grade.nextTest().isBlank()) {
            rows.add(new Row(Word.of("ui.verdict.next_test"), Mark.WATCH, Word.stored(grade.nextTest()), how));
        } else if (grade.verdict() == Verdict.PASS) {
            rows.add(new Row(
                    Word.of("ui.verdict.next_test"), Mark.GOOD, Word.of("ui.verdict.next_test.pass"), Word.NONE));
        }
        if (grade.verdict() != Verdict.INVALID) {
            int place = 1;
            for (Cause cause : grade.causes()) {
                rows.add(cause(cause, place++));
            }
        }
        rows.addAll(checks(grade));
        return rows;
    }

    /** Whether the complaint is explained; empty where nobody complained. */
    static Optional<Row> complaint(RunRecord run) {
        return run.intake().complaint().map(word -> complaint(run, word));
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
        return new Row(name, mark, Word.stored(run.grade().explains().why()), Word.NONE);
    }

    private static Row cause(Cause cause, int place) {
        return new Row(
                Word.of("ui.verdict.cause", place, Word.stored(cause.name())),
                Mark.UNKNOWN,
                Word.stored(cause.because()),
                Word.of("ui.verdict.to_tell", Word.stored(cause.nextTest())));
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
                        Word.stored(check.name()),
                        Mark.BAD,
                        Word.stored(check.finding()),
                        Word.stored(check.remedy())));
            }
        }
        return rows;
    }

    /** What gave a simulated fault away: the reasons, then the causes that were thought of. */
    static List<Row> giveaway(RunRecord run) {
        Verdict verdict = run.grade().verdict();
        List<Row> rows = new ArrayList<>();
        Word said = Word.of("verdict." + verdict.name().toLowerCase(Locale.ROOT));
        rows.add(new Row(Word.of("ui.practice.verdict"), VerdictWords.mark(verdict), said, Word.NONE));
        rows.addAll(why(run));
        int place = 1;
        for (Cause cause : run.grade().causes()) {
            rows.add(cause(cause, place++));
        }
        run.grade().standChecks().stream()
                .filter(check -> !check.ok())
                .map(check -> new Row(Word.stored(check.name()), Mark.BAD, Word.stored(check.finding()), Word.NONE))
                .forEach(rows::add);
        return rows;
    }
}
