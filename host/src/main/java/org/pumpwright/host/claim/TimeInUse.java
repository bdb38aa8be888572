package org.pumpwright.host.claim;

import java.time.LocalDate;
import java.util.Optional;
import org.pumpwright.host.quantity.Require;

/**
 * How long and how much a unit was in use. Thread-safe.
 *
 * @param sold day of the sale
 * @param delivered day of the delivery
 * @param firstUsed day of the first use
 * @param hours hours in use
 * @param acres acres done, US
 * @param registered whether the unit was registered with its maker; empty when nobody knows
 */
public record TimeInUse(
        Optional<Sourced<LocalDate>> sold,
        Optional<Sourced<LocalDate>> delivered,
        Optional<Sourced<LocalDate>> firstUsed,
        Optional<Sourced<Double>> hours,
        Optional<Sourced<Double>> acres,
        Optional<Boolean> registered) {
    private static final double MOST_HOURS = 100_000;
    private static final double MOST_ACRES = 10_000_000;

    /** Nothing is known. */
    public static final TimeInUse UNKNOWN = new TimeInUse(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public TimeInUse {
        hours.ifPresent(each -> Require.inRange("hours", each.value(), 0, MOST_HOURS, "h"));
        acres.ifPresent(each -> Require.inRange("acres", each.value(), 0, MOST_ACRES, "acres"));
    }
}
