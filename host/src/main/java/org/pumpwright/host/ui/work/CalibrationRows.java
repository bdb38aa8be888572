package org.pumpwright.host.ui.work;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.Certificate.Standing;
import org.pumpwright.host.stand.StandDescription;

/** A stand's certificates as lines of a list: until when each holds, how many days that is, and what to do. Thread-safe. */
final class CalibrationRows {
    /** A laboratory wants to be asked some weeks before; common practice, no source. */
    private static final long SOON_DAYS = 30;

    private CalibrationRows() {}

    /** Channels first, then the proof of the relief valve where there is one; what is due first comes first. */
    static List<Row> of(StandDescription stand, LocalDate today) {
        List<ChannelWords.Calibrated> all = new ArrayList<>(ChannelWords.certificates(stand.channels()));
        stand.reliefCheck().ifPresent(proof -> all.add(new ChannelWords.Calibrated(Word.of("ui.stand.relief"), proof)));
        return all.stream()
                .sorted((one, other) ->
                        Long.compare(urgency(one.certificate(), today), urgency(other.certificate(), today)))
                .map(each -> row(each.name(), each.certificate(), today))
                .toList();
    }

    /** Days left; what is not calibrated comes after what is past due and before what is in date. */
    private static long urgency(Certificate certificate, LocalDate today) {
        return certificate.standing(today) == Standing.NOT_CALIBRATED ? 0 : daysLeft(certificate, today);
    }

    private static long daysLeft(Certificate certificate, LocalDate today) {
        return certificate
                .due()
                .map(due -> ChronoUnit.DAYS.between(today, due) + (due.isBefore(today) ? 0 : 1))
                .orElse(Long.MAX_VALUE);
    }

    private static Row row(Word name, Certificate certificate, LocalDate today) {
        return switch (certificate.standing(today)) {
            case NOT_CALIBRATED ->
                new Row(
                        name,
                        Mark.WATCH,
                        Word.of("ui.stand.not_calibrated", Word.stored(certificate.number())),
                        Word.NONE);
            case IN_DATE -> inDate(name, certificate, today);
            case PAST_DUE ->
                new Row(
                        name,
                        Mark.BAD,
                        Word.of(
                                "ui.stand.past_due",
                                certificate.due().orElseThrow(),
                                -daysLeft(certificate, today),
                                Word.stored(certificate.number())),
                        Word.of("ui.stand.past_due.do"));
        };
    }

    private static Row inDate(Word name, Certificate certificate, LocalDate today) {
        LocalDate day = certificate.calibrated().orElseThrow();
        Word number = Word.stored(certificate.number());
        if (certificate.due().isEmpty()) {
            return new Row(name, Mark.GOOD, Word.of("ui.stand.no_due_date", number, day), Word.NONE);
        }
        // The last day counts: on it one day is left.
        long left = daysLeft(certificate, today);
        boolean soon = left <= SOON_DAYS;
        return new Row(
                name,
                soon ? Mark.WATCH : Mark.GOOD,
                Word.of("ui.stand.in_date", certificate.due().get(), left, number, day),
                soon ? Word.of("ui.stand.due_soon.do") : Word.NONE);
    }
}
