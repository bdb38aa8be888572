package org.pumpwright.host.cli.claim;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
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
import picocli.CommandLine.Option;

/** The common fields of an intake, typed on the command line; a sheet has them all. */
final class IntakeOptions {
    @Option(names = "--number", paramLabel = "N", description = "Number of the claim or job.")
    private String number = "";

    @Option(names = "--by", paramLabel = "NAME", description = "Who takes the unit in.")
    private String by = "";

    @Option(names = "--brought-by", paramLabel = "NAME", description = "Who brought it.")
    private String broughtBy = "";

    @Option(names = "--contact", paramLabel = "TEXT", description = "How that person is reached.")
    private String contact = "";

    @Option(names = "--customer", paramLabel = "NAME", description = "Whose unit it is.")
    private String customer = "";

    @Option(names = "--kind", paramLabel = "KIND", description = "pump-12v, hydraulic-pump, driver, meter, harness.")
    private String kind = "";

    @Option(names = "--model", paramLabel = "NAME", description = "A file in fixtures/models.")
    private String model = "";

    @Option(names = "--serial", paramLabel = "TEXT", description = "From the plate; \"no plate\" when it is gone.")
    private String serial = "";

    @Option(names = "--sold", paramLabel = "DAY:SOURCE", description = "Such as 2025-02-10:document.")
    private @Nullable String sold;

    @Option(names = "--first-used", paramLabel = "DAY:SOURCE", description = "Such as 2025-04-20:customer.")
    private @Nullable String firstUsed;

    @Option(names = "--hours", paramLabel = "X:SOURCE", description = "Such as 120:customer.")
    private @Nullable String hours;

    @Option(names = "--acres", paramLabel = "X:SOURCE", description = "Such as 4000:unknown.")
    private @Nullable String acres;

    @Option(names = "--product", paramLabel = "TEXT", description = "What was pumped; \"unknown\" is an answer.")
    private String product = "";

    @Option(names = "--complaint", paramLabel = "TEXT", description = "In the customer's own words.")
    private String complaint = "";

    @Option(names = "--complaint-code", paramLabel = "CODE", description = "The same as a code; picks the plan.")
    private String code = "";

    @Option(names = "--accessories", paramLabel = "TEXT", description = "What came with it; \"none\".")
    private String accessories = "";

    @Option(names = "--seal", paramLabel = "TEXT", description = "State of the maker's seal.")
    private String seal = "";

    @Option(names = "--tag", paramLabel = "NUMBER", description = "Number of the tag on its container.")
    private String tag = "";

    @Option(names = "--declared-clean", paramLabel = "true|false", arity = "1", description = "What the customer says.")
    private @Nullable Boolean declaredClean;

    @Option(names = "--value", paramLabel = "X", description = "What the claim is worth, in the shop's currency.")
    private @Nullable String value;

    @Option(names = "--practice", description = "The unit is simulated or invented.")
    private boolean practice;

    /** @throws IllegalArgumentException when a value will not do */
    ClaimIntake intake(OffsetDateTime now) {
        return new ClaimIntake(
                number,
                now,
                new People(broughtBy, contact, customer),
                new UnitAsReceived(kind, model, serial, Optional.empty(), accessories, seal, tag),
                new TimeInUse(
                        sourced(sold, LocalDate::parse),
                        Optional.empty(),
                        sourced(firstUsed, LocalDate::parse),
                        sourced(hours, Double::valueOf),
                        sourced(acres, Double::valueOf),
                        Optional.empty()),
                new OnThePlanter("", product, ""),
                new ComplaintAsMade(complaint, code, "", ""),
                new Decontamination(Optional.ofNullable(declaredClean), Optional.empty(), 0),
                Optional.ofNullable(value).map(Amount::of),
                by,
                practice);
    }

    private static <T> Optional<Sourced<T>> sourced(@Nullable String typed, Function<String, T> reader) {
        if (typed == null) {
            return Optional.empty();
        }
        int colon = typed.lastIndexOf(':');
        if (colon < 0) {
            throw new IllegalArgumentException(
                    "'%s' does not say what it rests on: write %s:document, :customer or :unknown"
                            .formatted(typed, typed));
        }
        try {
            return Optional.of(
                    new Sourced<>(reader.apply(typed.substring(0, colon)), Source.ofWord(typed.substring(colon + 1))));
        } catch (java.time.DateTimeException | NumberFormatException e) {
            throw new IllegalArgumentException(
                    "'%s' can't be read: write a day as 2026-03-15, a count as 120".formatted(typed), e);
        }
    }
}
