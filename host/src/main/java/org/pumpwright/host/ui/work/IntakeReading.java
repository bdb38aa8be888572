package org.pumpwright.host.ui.work;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.function.Function;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.ComplaintAsMade;
import org.pumpwright.host.claim.Decontamination;
import org.pumpwright.host.claim.OnThePlanter;
import org.pumpwright.host.claim.People;
import org.pumpwright.host.claim.Source;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.claim.TimeInUse;
import org.pumpwright.host.claim.UnitAsReceived;
import org.pumpwright.host.ui.work.IntakeField.Kind;

/** Reads a form that was filled in: what it says, and what in it can't be kept. JavaFX thread only. */
final class IntakeReading {
    static final String YES = "yes";
    static final String NO = "no";

    private IntakeReading() {}

    /** The first field that can't be kept as it was typed, said for whoever typed it. */
    static Optional<Word> wrong(IntakeForm form) {
        for (IntakeField each : IntakeField.values()) {
            String text = form.get(each);
            Word name = Word.of(each.key());
            if (each == IntakeField.CLAIM && !reads(text, ClaimIntake::checkedNumber)) {
                return Optional.of(Word.of(text.isEmpty() ? "ui.claim.wrong.no_claim" : "ui.claim.wrong.claim"));
            }
            if (!text.isEmpty() && !reads(text, reader(each.kind()))) {
                return Optional.of(Word.of("ui.claim.wrong." + word(each.kind()), name));
            }
            if (!text.isEmpty()
                    && each.kind().sourced()
                    && form.source(each).get().isEmpty()) {
                return Optional.of(Word.of("ui.claim.wrong.source", name));
            }
        }
        return form.corrects() && form.why().isEmpty() ? Optional.of(Word.of("ui.claim.wrong.why")) : Optional.empty();
    }

    private static String word(Kind kind) {
        return switch (kind) {
            case DAY, SOURCED_DAY -> "day";
            case AMOUNT -> "amount";
            default -> "count";
        };
    }

    private static Function<String, ?> reader(Kind kind) {
        return switch (kind) {
            case DAY, SOURCED_DAY -> LocalDate::parse;
            case AMOUNT -> Amount::of;
            case SOURCED_COUNT ->
                text -> new TimeInUse(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Sourced<>(Double.valueOf(text), Source.UNKNOWN)),
                        Optional.empty(),
                        Optional.empty());
            case COUNT -> text -> new Decontamination(Optional.empty(), Optional.empty(), Integer.parseInt(text));
            case TEXT, PICKED, YES_NO -> Function.identity();
        };
    }

    private static boolean reads(String text, Function<String, ?> reader) {
        try {
            return reader.apply(text) != null;
        } catch (DateTimeException | IllegalArgumentException e) {
            return false;
        }
    }

    /** @throws IllegalArgumentException when a field can't be kept as it is */
    static ClaimIntake of(IntakeForm form, OffsetDateTime now) {
        return new ClaimIntake(
                form.get(IntakeField.CLAIM),
                received(form, now),
                new People(
                        form.get(IntakeField.BROUGHT_BY),
                        form.get(IntakeField.CONTACT),
                        form.get(IntakeField.CUSTOMER)),
                unit(form),
                use(form),
                new OnThePlanter(
                        form.get(IntakeField.PLANTER), form.get(IntakeField.PRODUCT), form.get(IntakeField.LAST_FLUSH)),
                new ComplaintAsMade(
                        form.get(IntakeField.COMPLAINT),
                        form.get(IntakeField.COMPLAINT_CODE),
                        form.get(IntakeField.CONDITIONS),
                        form.get(IntakeField.ALREADY_SWAPPED)),
                new Decontamination(
                        yesOrNo(form.get(IntakeField.DECLARED_CLEAN)),
                        given(form, IntakeField.CONFIRMED_BY, Function.identity()),
                        given(form, IntakeField.RINSES, Integer::valueOf).orElse(0)),
                given(form, IntakeField.VALUE, Amount::of),
                form.get(IntakeField.TAKEN_BY),
                form.get(IntakeField.PRACTICE).equals(YES));
    }

    /** The time of day stays that of the first intake; of another day it is the time of writing. */
    private static OffsetDateTime received(IntakeForm form, OffsetDateTime now) {
        OffsetDateTime known = form.before().map(ClaimIntake::received).orElse(now);
        return given(form, IntakeField.RECEIVED, LocalDate::parse)
                .filter(day -> !day.equals(known.toLocalDate()))
                .map(day -> OffsetDateTime.of(day, known.toLocalTime(), known.getOffset()))
                .orElse(known);
    }

    private static UnitAsReceived unit(IntakeForm form) {
        return new UnitAsReceived(
                form.get(IntakeField.KIND),
                form.get(IntakeField.MODEL),
                form.get(IntakeField.SERIAL),
                given(form, IntakeField.DATE_CODE, Function.identity()),
                form.get(IntakeField.ACCESSORIES),
                form.get(IntakeField.SEAL),
                form.get(IntakeField.TAG));
    }

    private static TimeInUse use(IntakeForm form) {
        return new TimeInUse(
                sourced(form, IntakeField.SOLD, LocalDate::parse),
                sourced(form, IntakeField.DELIVERED, LocalDate::parse),
                sourced(form, IntakeField.FIRST_USED, LocalDate::parse),
                sourced(form, IntakeField.HOURS, Double::valueOf),
                sourced(form, IntakeField.ACRES, Double::valueOf),
                yesOrNo(form.get(IntakeField.REGISTERED)));
    }

    private static <T> Optional<T> given(IntakeForm form, IntakeField which, Function<String, T> reader) {
        String text = form.get(which);
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(reader.apply(text));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("'%s' is no day: write it as 2026-03-15".formatted(text), e);
        }
    }

    private static <T> Optional<Sourced<T>> sourced(IntakeForm form, IntakeField which, Function<String, T> reader) {
        return given(form, which, reader)
                .flatMap(value -> form.source(which).get().map(source -> new Sourced<>(value, source)));
    }

    static Optional<Boolean> yesOrNo(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text.equals(YES));
    }

    static String yesOrNo(Optional<Boolean> answer) {
        return answer.map(yes -> yes ? YES : NO).orElse("");
    }

    static String count(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
