package org.pumpwright.host.claim.statistics;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * The units of one shipment and what became of them. Only months are known of shipping, so ages are the mean ages of units shipped
 * evenly over their month: n months for a return n months on, a third of a month within the same one. Thread-safe.
 *
 * @param shipment what was shipped
 * @param returns every return of its units, in the order they came in
 * @param ends of the units whose watched life has ended, one each
 * @param watchedUntil last day watched
 */
public record Lot(Shipment shipment, List<ReturnFact> returns, List<UnitEnd> ends, LocalDate watchedUntil) {
    /** Mean distance of two days drawn evenly from the same month, in months. */
    private static final double WITHIN_THE_MONTH = 1.0 / 3;

    public Lot {
        returns = List.copyOf(returns);
        ends = List.copyOf(ends);
    }

    int stillServing() {
        return shipment.count() - ends.size();
    }

    /** Whole months between shipping and this month. */
    int monthsTo(YearMonth month) {
        return Math.toIntExact(shipment.month().until(month, ChronoUnit.MONTHS));
    }

    double age(UnitEnd end) {
        int months = monthsTo(end.month());
        return months == 0 ? WITHIN_THE_MONTH : months;
    }

    /** Age of what still serves on the last day watched, months. */
    double servingAge() {
        double partOfMonth = (double) watchedUntil.getDayOfMonth() / watchedUntil.lengthOfMonth();
        int months = monthsTo(YearMonth.from(watchedUntil));
        return months == 0 ? partOfMonth / 2 : months + partOfMonth - 0.5;
    }

    int failures() {
        return Math.toIntExact(ends.stream().filter(UnitEnd::failed).count());
    }

    /** Units whose watched life was not over before it was this many months old. */
    int servingAt(int months) {
        if (months > monthsTo(YearMonth.from(watchedUntil))) {
            return 0;
        }
        return shipment.count()
                - Math.toIntExact(ends.stream()
                        .filter(end -> monthsTo(end.month()) < months)
                        .count());
    }

    int failuresAt(int months) {
        return Math.toIntExact(ends.stream()
                .filter(end -> end.failed() && monthsTo(end.month()) == months)
                .count());
    }

    /** Its units as lives of one failure mode: all that did not fail of it are suspensions. */
    void addLives(Optional<String> mode, List<Life> lives) {
        for (UnitEnd end : ends) {
            lives.add(new Life(age(end), end.failed() && end.mode().equals(mode), 1));
        }
        if (stillServing() > 0) {
            lives.add(Life.suspended(servingAge(), stillServing()));
        }
    }
}
