package org.pumpwright.host.claim.statistics;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;

/** Returns for tests, told in few words. The claim's name is serial and day. */
final class Returned {
    private final String serial;
    private Optional<YearMonth> shipped = Optional.empty();
    private Optional<String> dateCode = Optional.empty();
    private LocalDate day = LocalDate.of(2026, 1, 1);
    private Optional<LocalDate> back = Optional.empty();
    private OptionalDouble minutes = OptionalDouble.empty();
    private boolean practice;

    private Returned(String serial) {
        this.serial = serial;
    }

    static Returned unit(String serial) {
        return new Returned(serial);
    }

    Returned shipped(int year, int month) {
        shipped = Optional.of(YearMonth.of(year, month));
        return this;
    }

    Returned code(String code) {
        dateCode = Optional.of(code);
        return this;
    }

    Returned on(int year, int month, int dayOfMonth) {
        day = LocalDate.of(year, month, dayOfMonth);
        return this;
    }

    Returned handedBackAfter(int days) {
        back = Optional.of(day.plusDays(days));
        return this;
    }

    Returned minutes(double touch) {
        minutes = OptionalDouble.of(touch);
        return this;
    }

    Returned practice() {
        practice = true;
        return this;
    }

    ReturnFact failedOf(String mode) {
        return fact(Optional.of(Outcome.CONFIRMED_FAILURE), Optional.of(mode));
    }

    ReturnFact noFault() {
        return fact(Optional.of(Outcome.NO_FAULT_FOUND), Optional.empty());
    }

    ReturnFact found(Outcome outcome) {
        return fact(Optional.of(outcome), Optional.empty());
    }

    ReturnFact open() {
        return fact(Optional.empty(), Optional.empty());
    }

    private ReturnFact fact(Optional<Outcome> outcome, Optional<String> mode) {
        return new ReturnFact(
                serial + "-" + day,
                new ReturnFact.Unit("pump", serial.isEmpty() ? Optional.empty() : Optional.of(serial)),
                dateCode,
                shipped,
                Optional.empty(),
                day,
                OptionalDouble.empty(),
                outcome,
                mode,
                back,
                minutes,
                practice);
    }
}
