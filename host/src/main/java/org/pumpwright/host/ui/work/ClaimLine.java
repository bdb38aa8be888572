package org.pumpwright.host.ui.work;

import java.time.LocalDate;
import java.util.Locale;
import java.util.stream.Stream;
import org.pumpwright.host.app.claim.ClaimList;
import org.pumpwright.host.app.claim.NextStep;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.UnitAsReceived;

/**
 * A claim in the list of claims: what it is, how long it waits, and whose move it is. Thread-safe.
 *
 * @param line as the desk lists it
 * @param next what it waits for
 */
record ClaimLine(ClaimList.Line line, NextStep next) {
    /** The claim's number. */
    String number() {
        return line.file().number();
    }

    /** As a row. */
    Row row() {
        ClaimFile file = line.file();
        UnitAsReceived unit = file.intake().unit();
        LocalDate came = file.intake().received().toLocalDate();
        return new Row(
                Word.asIs("%s   %s   %s"
                        .formatted(file.number(), unit.model(), unit.serial())
                        .strip()),
                mark(),
                waits(Word.of(file.whereabouts().to().key()), came),
                move());
    }

    /** Where the unit is and since when; the days in the shop only where they are others. */
    private Word waits(Word state, LocalDate came) {
        if (line.days() == 0) {
            return Word.of("ui.claim.line.today", state);
        }
        String key = next == NextStep.NOTHING ? "ui.claim.line.left" : "ui.claim.line";
        return Word.of(key, state, days(line.daysHere()), days(line.days()), came);
    }

    private Word move() {
        Word step = Word.of("ui.claim.step." + small(next));
        Word said = next.whose() == NextStep.Whose.NOBODY
                ? step
                : Word.of("ui.claim.whose", Word.of("ui.claim.whose." + small(next.whose())), step);
        return line.file()
                .decision()
                .map(decision -> Word.of(
                        "ui.claim.line.decided", Word.of(decision.outcome().key()), said))
                .orElse(said);
    }

    private static String small(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    private Mark mark() {
        return switch (next) {
            case HAND_OVER, NOTHING -> Mark.GOOD;
            case COMPLETE_INTAKE, RINSE -> Mark.WATCH;
            case TEST, FIND, DECIDE -> Mark.UNKNOWN;
        };
    }

    static Word days(long count) {
        if (count == 0) {
            return Word.of("ui.claim.days.none");
        }
        return count == 1 ? Word.of("ui.claim.days.one") : Word.of("ui.claim.days", count);
    }

    /** Whether a part of the number, serial, model or tag is this; small and capital letters are the same. */
    boolean has(String sought) {
        String plain = sought.strip().toLowerCase(Locale.ROOT);
        UnitAsReceived unit = line.file().intake().unit();
        return Stream.of(number(), unit.serial(), unit.model(), unit.tag())
                .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(plain));
    }

    /** Whether this is what was scanned from its paper or its unit: the number or the serial, whole. */
    boolean is(String scanned) {
        return number().equalsIgnoreCase(scanned.strip())
                || (line.file().intake().unit().hasSerial()
                        && line.file().intake().unit().isSerial(scanned));
    }
}
