package org.pumpwright.host.app.claim;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.claim.UnitAsReceived;
import org.pumpwright.host.claim.statistics.Outcome;
import org.pumpwright.host.claim.statistics.ReturnFact;

/** What counts of a claim: no person, no customer, no decision. Thread-safe. */
final class ReturnReading {
    private ReturnReading() {}

    static ReturnFact of(ClaimFile claim) {
        UnitAsReceived unit = claim.intake().unit();
        LocalDate returned = claim.intake().received().toLocalDate();
        return new ReturnFact(
                claim.number(),
                new ReturnFact.Unit(
                        unit.model(),
                        unit.hasSerial() ? Optional.of(unit.serial().toUpperCase(Locale.ROOT)) : Optional.empty()),
                unit.dateCode(),
                claim.intake()
                        .use()
                        .delivered()
                        .or(() -> claim.intake().use().sold())
                        .map(day -> YearMonth.from(day.value())),
                claim.intake().use().firstUsed().map(Sourced::value),
                returned,
                claim.intake()
                        .use()
                        .hours()
                        .map(hours -> OptionalDouble.of(hours.value()))
                        .orElse(OptionalDouble.empty()),
                claim.finding()
                        .map(finding -> Outcome.ofCategory(finding.category().name())),
                claim.finding()
                        .map(finding -> finding.parts().stream().sorted().collect(Collectors.joining(" + ")))
                        .filter(mode -> !mode.isEmpty()),
                claim.moves().stream()
                        .filter(move -> move.to() == CustodyState.RETURNED)
                        .map(CustodyMove::at)
                        .map(OffsetDateTime::toLocalDate)
                        .filter(day -> !day.isBefore(returned))
                        .findFirst(),
                OptionalDouble.empty(),
                claim.intake().practice());
    }
}
