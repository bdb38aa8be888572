package org.pumpwright.host.claim.coverage;

import java.time.LocalDate;
import java.time.MonthDay;

/**
 * The part of the year in which units work. Thread-safe.
 *
 * @param first its first day
 * @param last its last day; before the first one where the season goes over New Year
 */
public record Season(MonthDay first, MonthDay last) {
    /** The last day of the season that holds this day, or else of the next one. */
    LocalDate endFrom(LocalDate day) {
        LocalDate end = last.atYear(day.getYear());
        return end.isBefore(day) ? last.atYear(day.getYear() + 1) : end;
    }

    private LocalDate beginningOf(LocalDate end) {
        LocalDate begin = first.atYear(end.getYear());
        return begin.isAfter(end) ? first.atYear(end.getYear() - 1) : begin;
    }

    /** Whether the season had begun before this day and still goes on: what is left of it is only a part. */
    boolean isPartialOn(LocalDate day) {
        return beginningOf(endFrom(day)).isBefore(day);
    }

    /**
     * The last day of cover.
     *
     * @param from the day from which is counted
     * @param seasons how many are covered
     * @param firstPartialFree whether a season of which only a part was left does not count
     */
    LocalDate lastCovered(LocalDate from, int seasons, boolean firstPartialFree) {
        int more = seasons - 1 + (firstPartialFree && isPartialOn(from) ? 1 : 0);
        LocalDate end = endFrom(from);
        return last.atYear(end.getYear() + more);
    }
}
