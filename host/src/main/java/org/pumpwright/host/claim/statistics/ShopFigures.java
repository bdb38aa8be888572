package org.pumpwright.host.claim.statistics;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The shop owner's figures. Thread-safe.
 *
 * @param repeats of the units handed back that could have come again within the window by the last day watched, those that did;
 *     empty when there are none yet. Units without a readable serial cannot be followed and are left out
 * @param turnaroundDays from coming in to being handed back
 * @param touchMinutes of the units for which they were kept
 * @param open claims without a finding
 * @param oldestOpenDays age of the oldest of them
 */
public record ShopFigures(
        Optional<Share> repeats,
        Optional<Middle> turnaroundDays,
        Optional<Middle> touchMinutes,
        int open,
        OptionalInt oldestOpenDays) {
    /** A unit that comes again within so many days is a repeat (common practice). */
    public static final int REPEAT_DAYS = 30;

    /** Of the returns up to the last day watched. */
    public static ShopFigures of(List<ReturnFact> facts, LocalDate watchedUntil) {
        List<ReturnFact> open = facts.stream().filter(fact -> !fact.concluded()).toList();
        return new ShopFigures(
                repeats(facts, watchedUntil),
                Middle.of(facts.stream()
                        .filter(fact -> fact.handedBack().isPresent())
                        .map(fact -> (double) ChronoUnit.DAYS.between(
                                fact.returned(), fact.handedBack().orElseThrow()))
                        .toList()),
                Middle.of(facts.stream()
                        .filter(fact -> fact.touchMinutes().isPresent())
                        .map(fact -> fact.touchMinutes().getAsDouble())
                        .toList()),
                open.size(),
                open.stream()
                        .mapToInt(fact -> Math.toIntExact(ChronoUnit.DAYS.between(fact.returned(), watchedUntil)))
                        .max());
    }

    private static Optional<Share> repeats(List<ReturnFact> facts, LocalDate watchedUntil) {
        List<ReturnFact> followed = new ArrayList<>(facts.stream()
                .filter(fact -> fact.unit().serial().isPresent())
                .sorted(Comparator.comparing(ReturnFact::returned).thenComparing(ReturnFact::claim))
                .toList());
        int could = 0;
        int did = 0;
        for (ReturnFact fact : followed) {
            Optional<LocalDate> until = fact.handedBack().map(day -> day.plusDays(REPEAT_DAYS));
            if (until.filter(day -> !day.isAfter(watchedUntil)).isPresent()) {
                could++;
                did += cameAgain(followed, fact, until.get()) ? 1 : 0;
            }
        }
        return could == 0 ? Optional.empty() : Optional.of(new Share(did, could));
    }

    private static boolean cameAgain(List<ReturnFact> followed, ReturnFact before, LocalDate until) {
        LocalDate handedBack = before.handedBack().orElseThrow();
        return followed.stream()
                .anyMatch(fact -> !fact.claim().equals(before.claim())
                        && fact.unit().equals(before.unit())
                        && !fact.returned().isBefore(handedBack)
                        && !fact.returned().isAfter(until));
    }
}
