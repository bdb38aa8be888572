package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.pumpwright.host.app.StandCheckUp;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.run.SafeState;
import org.pumpwright.host.stand.conform.CheckResult;

/** What was found at a stand, as lines of a list. Thread-safe. */
final class CareRows {
    private static final Set<String> KNOWN =
            Set.of("supply_at_rest", "zero_current", "zero_pulses", "sensors", "meter_calibration", "calibration_due");

    private CareRows() {}

    /** The mark of the worst line; {@code GOOD} when there is none. */
    static Mark worst(List<Row> rows) {
        return rows.stream()
                .map(Row::mark)
                .filter(mark -> mark != Mark.UNKNOWN)
                .max(Comparator.naturalOrder())
                .orElse(Mark.GOOD);
    }

    static List<Row> checks(StandCheckUp.Finding finding) {
        List<Row> rows = new ArrayList<>();
        if (!finding.outcome().ending().completed()) {
            rows.add(new Row(
                    Word.of("ui.stand.check.ended"),
                    Mark.BAD,
                    Word.stored(finding.outcome().ending().reason()),
                    Word.of("ui.stand.check.again")));
        }
        finding.checks().forEach(check -> rows.add(row(check)));
        rows.add(safe(finding.outcome().safe()));
        return rows;
    }

    private static Row row(StandCheck check) {
        String key = check.name().replace(' ', '_');
        boolean known = KNOWN.contains(key);
        Word name = known ? Word.of("ui.stand.check." + key) : Word.stored(check.name());
        Word remedy = known ? Word.of("ui.stand.check." + key + ".do") : Word.stored(check.remedy());
        return new Row(
                name, check.ok() ? Mark.GOOD : Mark.BAD, Word.stored(check.finding()), check.ok() ? Word.NONE : remedy);
    }

    /** How the stand was left. */
    static Row safe(SafeState state) {
        return switch (state) {
            case CONFIRMED ->
                new Row(Word.of("ui.stand.safe"), Mark.GOOD, Word.of("ui.stand.safe.confirmed"), Word.NONE);
            case LOCKED ->
                new Row(
                        Word.of("ui.stand.safe"),
                        Mark.BAD,
                        Word.of("ui.stand.safe.locked"),
                        Word.of("ui.stand.safe.locked.do"));
            case NOT_CONFIRMED ->
                new Row(
                        Word.of("ui.stand.safe"),
                        Mark.BAD,
                        Word.of("ui.stand.safe.not_confirmed"),
                        Word.of("ui.stand.safe.not_confirmed.do"));
        };
    }

    /**
     * One check of the board against the protocol. What was seen is told only where it is not as it must be: sixty lines of evidence
     * hide the one that matters.
     */
    static Row row(CheckResult result) {
        Word name = Word.of("ui.stand.demand", Word.stored(result.name()), result.section());
        return switch (result.outcome()) {
            case HELD -> new Row(name, Mark.GOOD, Word.NONE, Word.NONE);
            case BROKEN -> new Row(name, Mark.BAD, Word.stored(result.evidence()), Word.NONE);
            case NOT_POSSIBLE -> new Row(name, Mark.UNKNOWN, Word.stored(result.evidence()), Word.NONE);
        };
    }
}
