package org.pumpwright.host.report.retest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;

/**
 * Two runs of the same unit, in the order of time. Thread-safe.
 *
 * @param before the earlier one
 * @param after the later one
 */
public record Retest(RunRecord before, RunRecord after) {
    private static final String NO_PLATE = "no plate";
    private static final Comparator<RunRecord> IN_TIME =
            Comparator.comparing((RunRecord run) -> run.startedAt().toInstant()).thenComparing(RunRecord::id);

    /**
     * Two runs, in whatever order they are given.
     *
     * @throws IllegalArgumentException when they are not certainly of the same unit, or are one and the same run
     */
    public static Retest of(RunRecord one, RunRecord other) {
        if (one.id().equals(other.id())) {
            throw new IllegalArgumentException("both are run %s: a retest needs two runs".formatted(one.id()));
        }
        RunRecord.Subject first = one.subject();
        RunRecord.Subject second = other.subject();
        if (!first.model().equals(second.model())) {
            throw new IllegalArgumentException("run %s is of model %s, run %s of model %s: a retest is of one unit"
                    .formatted(one.id(), first.model(), other.id(), second.model()));
        }
        if (!first.serial().equals(second.serial())) {
            throw new IllegalArgumentException(
                    "run %s is of serial '%s', run %s of serial '%s': a retest is of one unit"
                            .formatted(one.id(), first.serial(), other.id(), second.serial()));
        }
        String serial = first.serial().strip().toLowerCase(Locale.ROOT);
        if (serial.isEmpty() || serial.equals(NO_PLATE)) {
            throw new IllegalArgumentException(
                    "runs %s and %s are of units without a serial: nothing shows that they are of one unit"
                            .formatted(one.id(), other.id()));
        }
        return IN_TIME.compare(one, other) < 0 ? new Retest(one, other) : new Retest(other, one);
    }

    /** True when both were held against the same version of one curve. */
    public boolean sameCurve() {
        return before.curve().isPresent()
                && before.curve()
                        .map(RunRecord.CurveUsed::label)
                        .equals(after.curve().map(RunRecord.CurveUsed::label));
    }

    /** True when both runs say something of the unit. */
    public boolean speaksOfTheUnit() {
        return speaks(before.grade().verdict()) && speaks(after.grade().verdict());
    }

    static boolean speaks(Verdict verdict) {
        return switch (verdict) {
            case PASS, FAIL, INCONCLUSIVE -> true;
            case INVALID, NOT_TESTED -> false;
        };
    }

    /** What was judged in either run, in the order of the earlier one; what only the later one has comes last. */
    public List<Change> changes() {
        List<FeatureJudgement> left = new ArrayList<>(after.grade().features());
        List<Change> changes = new ArrayList<>();
        for (FeatureJudgement was : before.grade().features()) {
            Optional<FeatureJudgement> is =
                    left.stream().filter(each -> sameThing(was, each)).findFirst();
            is.ifPresent(left::remove);
            changes.add(new Change(Optional.of(was), is, sameCurve()));
        }
        left.forEach(only -> changes.add(new Change(Optional.empty(), Optional.of(only), sameCurve())));
        return changes.stream().filter(Change::judged).toList();
    }

    /** A feature with limits of several sets is there once for each; limits of a curve count as one set whatever its version. */
    private static boolean sameThing(FeatureJudgement one, FeatureJudgement other) {
        boolean sameSet = one.limits().centre().isPresent()
                ? other.limits().centre().isPresent()
                : Objects.equals(one.limits().set(), other.limits().set());
        return one.feature().key().equals(other.feature().key()) && sameSet;
    }
}
