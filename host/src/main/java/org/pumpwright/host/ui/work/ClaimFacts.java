package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.claim.TimeInUse;
import org.pumpwright.host.claim.UnitAsReceived;

/** What was written down when a unit came in, and where it was since, as named facts. Thread-safe. */
final class ClaimFacts {
    private final List<Fact> facts = new ArrayList<>();

    private ClaimFacts() {}

    static List<Fact> of(ClaimFile file) {
        ClaimFacts all = new ClaimFacts();
        ClaimIntake intake = file.intake();
        all.unit(intake.unit());
        all.said("complaint", intake.complaint().words());
        all.said("conditions", intake.complaint().conditions());
        all.said("already_swapped", intake.complaint().alreadySwapped());
        all.said("product", intake.planter().product());
        all.add("clean", clean(intake));
        all.said("last_flush", intake.planter().lastFlush());
        all.said("planter", intake.planter().makeUp());
        all.said("customer", intake.people().customer());
        all.said("brought_by", intake.people().broughtBy());
        all.said("contact", intake.people().contact());
        all.use(intake.use());
        all.said("value", intake.value().map(value -> value.text()).orElse(""));
        all.said("taken_by", intake.takenBy());
        file.moves().forEach(all::custody);
        return List.copyOf(all.facts);
    }

    private void unit(UnitAsReceived unit) {
        add("unit", kind(unit));
        said("serial", unit.serial());
        said("date_code", unit.dateCode().orElse(""));
        said("accessories", unit.accessories());
        said("seal", unit.seal());
        said("tag", unit.tag());
    }

    private static Word kind(UnitAsReceived unit) {
        if (unit.kind().isEmpty()) {
            return unit.model().isEmpty() ? Word.NONE : Word.asIs(unit.model());
        }
        Word kind = Word.of("ui.claim.kind." + unit.kind());
        return unit.model().isEmpty() ? kind : Word.of("ui.claim.unit_line", kind, unit.model());
    }

    private void use(TimeInUse use) {
        sourced("sold", use.sold(), Object::toString);
        sourced("delivered", use.delivered(), Object::toString);
        sourced("first_used", use.firstUsed(), Object::toString);
        sourced("hours", use.hours(), IntakeReading::count);
        sourced("acres", use.acres(), IntakeReading::count);
        add(
                "registered",
                use.registered()
                        .map(yes -> Word.of(yes ? "ui.claim.yes" : "ui.claim.no"))
                        .orElse(Word.NONE));
    }

    private static Word clean(ClaimIntake intake) {
        return intake.decontamination()
                .confirmedBy()
                .map(name -> Word.of(
                        "ui.claim.clean.confirmed", intake.decontamination().rinses(), name))
                .orElse(Word.of("ui.claim.clean.not_confirmed"));
    }

    private void custody(CustodyMove move) {
        facts.add(new Fact(
                Word.of(move.to().key()),
                Word.asIs("%s, %s, %s".formatted(move.at().toLocalDate(), move.person(), move.place()))));
    }

    private void said(String key, String value) {
        add(key, value.isEmpty() ? Word.NONE : Word.asIs(value));
    }

    private <T> void sourced(String key, Optional<Sourced<T>> value, Function<T, String> printed) {
        add(
                key,
                value.map(known -> Word.of(
                                "ui.claim.sourced",
                                printed.apply(known.value()),
                                Word.of("claim.source." + known.source().word())))
                        .orElse(Word.NONE));
    }

    private void add(String key, Word value) {
        facts.add(new Fact(Word.of("ui.claim.fact." + key), value));
    }
}
