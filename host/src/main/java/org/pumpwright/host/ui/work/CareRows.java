package org.pumpwright.host.ui.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.pumpwright.host.app.StandCheckUp;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.run.SafeState;
import org.pumpwright.host.stand.conform.CheckResult;
import org.pumpwright.host.trace.Channels;

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

    static List<Row> calibrations(Channels channels, LocalDate today) {
        return ChannelWords.certificates(channels).stream()
                .map(each -> calibration(each.name(), each.certificate(), today))
                .toList();
    }

    private static Row calibration(Word name, Certificate certificate, LocalDate today) {
        Word remedy = Word.of("ui.stand.calibrate");
        return switch (certificate.standing(today)) {
            case NOT_CALIBRATED ->
                new Row(name, Mark.WATCH, Word.of("ui.stand.not_calibrated", certificate.number()), remedy);
            case IN_DATE -> new Row(name, Mark.GOOD, inDate(certificate), Word.NONE);
            case PAST_DUE ->
                new Row(
                        name,
                        Mark.BAD,
                        Word.of("ui.stand.past_due", certificate.due().orElseThrow(), certificate.number()),
                        remedy);
        };
    }

    private static Word inDate(Certificate certificate) {
        LocalDate day = certificate.calibrated().orElseThrow();
        return certificate
                .due()
                .map(due -> Word.of("ui.stand.in_date", certificate.number(), day, due))
                .orElseGet(() -> Word.of("ui.stand.no_due_date", certificate.number(), day));
    }

    static List<Row> checks(StandCheckUp.Finding finding) {
        List<Row> rows = new ArrayList<>();
        if (!finding.outcome().ending().completed()) {
            rows.add(new Row(
                    Word.of("ui.stand.check.ended"),
                    Mark.BAD,
                    Word.asIs(finding.outcome().ending().reason()),
                    Word.of("ui.stand.check.again")));
        }
        finding.checks().forEach(check -> rows.add(row(check)));
        rows.add(safe(finding.outcome().safe()));
        return rows;
    }

    private static Row row(StandCheck check) {
        String key = check.name().replace(' ', '_');
        boolean known = KNOWN.contains(key);
        Word name = known ? Word.of("ui.stand.check." + key) : Word.asIs(check.name());
        Word remedy = known ? Word.of("ui.stand.check." + key + ".do") : Word.asIs(check.remedy());
        return new Row(
                name, check.ok() ? Mark.GOOD : Mark.BAD, Word.asIs(check.finding()), check.ok() ? Word.NONE : remedy);
    }

    private static Row safe(SafeState state) {
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

    /** One check of the board against the protocol; the protocol's own words are in one language. */
    static Row row(CheckResult result) {
        Mark mark = switch (result.outcome()) {
            case HELD -> Mark.GOOD;
            case BROKEN -> Mark.BAD;
            case NOT_POSSIBLE -> Mark.UNKNOWN;
        };
        return new Row(
                Word.asIs(result.name() + " (" + result.section() + ")"),
                mark,
                Word.asIs(result.evidence()),
                Word.NONE);
    }
}
