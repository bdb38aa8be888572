package org.pumpwright.host.claim.statistics;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One return of one unit, as far as it is counted. No person and no customer is in it. Thread-safe.
 *
 * @param claim the claim's own name
 * @param unit model and serial
 * @param dateCode as on the plate
 * @param shipped month it was shipped, where known
 * @param firstUse day of first use, where known
 * @param returned day it came in
 * @param hours run by then, where known; not negative
 * @param outcome what the evidence says; empty while the claim is open
 * @param mode the failure mode's code, where one was determined
 * @param handedBack day it left the desk again, or the claim was closed
 * @param touchMinutes minutes spent on it, where kept; not negative
 * @param practice whether it is a practice unit, never counted with real ones
 */
public record ReturnFact(
        String claim,
        Unit unit,
        Optional<String> dateCode,
        Optional<YearMonth> shipped,
        Optional<LocalDate> firstUse,
        LocalDate returned,
        OptionalDouble hours,
        Optional<Outcome> outcome,
        Optional<String> mode,
        Optional<LocalDate> handedBack,
        OptionalDouble touchMinutes,
        boolean practice) {
    /**
     * Which unit.
     *
     * @param model model's name
     * @param serial as on the plate; empty where no plate can be read, and such units are never taken for the same one
     */
    public record Unit(String model, Optional<String> serial) {}

    public ReturnFact {
        notNegative(claim, "hours", hours);
        notNegative(claim, "minutes", touchMinutes);
        if (handedBack.isPresent() && handedBack.get().isBefore(returned)) {
            throw new IllegalArgumentException(
                    "claim %s: handed back %s, before it came in on %s".formatted(claim, handedBack.get(), returned));
        }
    }

    /** Whether the evidence has been read: a finding is on file. */
    public boolean concluded() {
        return outcome.isPresent();
    }

    /** Whether it is concluded with this outcome. */
    public boolean is(Outcome what) {
        return outcome.filter(what::equals).isPresent();
    }

    private static void notNegative(String claim, String name, OptionalDouble value) {
        if (value.isPresent() && !(value.getAsDouble() >= 0)) {
            throw new IllegalArgumentException(
                    "claim %s: %s %s must be 0 or more".formatted(claim, name, value.getAsDouble()));
        }
    }
}
