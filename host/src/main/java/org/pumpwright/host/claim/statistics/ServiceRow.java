package org.pumpwright.host.claim.statistics;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/**
 * One shipment in the months-in-service table (also called Nevada chart). Thread-safe.
 *
 * @param batch date code, or the month
 * @param shippedIn month of shipping
 * @param shipped how many
 * @param returned returns by whole months after shipping, from 0 on
 * @param confirmed units with a confirmed failure, the same way
 * @param stillServing how many have not ended: suspensions on the last day watched
 * @param servingMonths how old those are, months
 */
public record ServiceRow(
        String batch,
        YearMonth shippedIn,
        int shipped,
        List<Integer> returned,
        List<Integer> confirmed,
        int stillServing,
        double servingMonths) {
    public ServiceRow {
        returned = List.copyOf(returned);
        confirmed = List.copyOf(confirmed);
    }

    /** The rows of a fleet, oldest shipment first. */
    public static List<ServiceRow> of(Fleet fleet) {
        return fleet.lots().stream().map(ServiceRow::of).toList();
    }

    private static ServiceRow of(Lot lot) {
        List<Integer> returned = new ArrayList<>();
        List<Integer> confirmed = new ArrayList<>();
        for (int month = 0; month <= lot.monthsTo(YearMonth.from(lot.watchedUntil())); month++) {
            int age = month;
            returned.add(Math.toIntExact(lot.returns().stream()
                    .filter(fact -> lot.monthsTo(YearMonth.from(fact.returned())) == age)
                    .count()));
            confirmed.add(lot.failuresAt(month));
        }
        return new ServiceRow(
                lot.shipment().batch(),
                lot.shipment().month(),
                lot.shipment().count(),
                returned,
                confirmed,
                lot.stillServing(),
                lot.servingAge());
    }
}
