package org.pumpwright.host.claim.coverage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.Missing;

/**
 * The coverage rules of a parts desk, with the days on which they hold. Every value knows its line. Thread-safe.
 *
 * @param name of the rules
 * @param version raised with every change
 * @param file where they stand
 * @param invented whether they are only an example
 * @param from first day on which a unit must have come for them
 * @param to last such day; empty while they hold
 * @param period how long a unit is covered
 * @param caps how much use is covered
 * @param registration whether the unit must be registered
 * @param consumables parts that are not covered
 * @param outOfBoxDays within how many days a unit that was never used counts as new; empty where there is no such rule
 * @param repeatDays within how many days the same symptom is the same matter; empty where there is no such rule
 * @param attachments what must be there before a claim is approved or denied
 * @param secondSignerAbove above which value two persons sign; empty where one is always enough
 * @param goodwillBudget what may be given in a calendar year without being owed; empty where there is no limit
 */
public record CoverageRules(
        String name,
        int version,
        String file,
        boolean invented,
        LocalDate from,
        Optional<LocalDate> to,
        Period period,
        List<Cap> caps,
        At<Boolean> registration,
        At<List<String>> consumables,
        Optional<At<Integer>> outOfBoxDays,
        Optional<At<Integer>> repeatDays,
        List<Attachments> attachments,
        Optional<At<Amount>> secondSignerAbove,
        Optional<At<Amount>> goodwillBudget) {
    public CoverageRules {
        caps = List.copyOf(caps);
        attachments = List.copyOf(attachments);
        to.filter(last -> last.isBefore(from)).ifPresent(last -> {
            throw new IllegalArgumentException("the rules end on %s, before they begin on %s".formatted(last, from));
        });
    }

    /** From which day a unit's cover is counted. */
    public enum CountedFrom {
        SALE,
        DELIVERY,
        FIRST_USE
    }

    /**
     * How long a unit is covered: so many months or so many seasons.
     *
     * @param countedFrom from which day
     * @param length months or seasons
     * @param seasons the season, where seasons are counted; empty where months are
     * @param firstPartialFree whether a season of which only a part was left does not count
     * @param line where it stands
     */
    public record Period(
            CountedFrom countedFrom, int length, Optional<Season> seasons, boolean firstPartialFree, int line) {
        /**
         * The last day of cover, that day included. Months end on the day with the same number; where there is none, on the last
         * of the month. Common practice, no source.
         */
        public LocalDate lastCovered(LocalDate day) {
            return seasons.map(season -> season.lastCovered(day, length, firstPartialFree))
                    .orElse(day.plusMonths(length));
        }
    }

    /** What to say when nobody knows how much a unit was used. */
    public enum IfUnknown {
        HOLDS,
        DOES_NOT_HOLD,
        UNKNOWN
    }

    /** What is counted. */
    public enum Counted {
        HOURS,
        ACRES
    }

    /**
     * How much use is covered.
     *
     * @param counted hours or acres
     * @param most that much and no more
     * @param ifUnknown what to say when nobody knows
     * @param line where it stands
     */
    public record Cap(Counted counted, double most, IfUnknown ifUnknown, int line) {}

    /**
     * What must be there.
     *
     * @param from for claims of this value or more
     * @param needed what
     * @param line where it stands
     */
    public record Attachments(Amount from, List<Missing> needed, int line) {
        public Attachments {
            needed = List.copyOf(needed);
        }
    }

    /** Name, version and file, as papers print them. */
    public String label() {
        return "%s v%d%s (%s)".formatted(name, version, invented ? ", invented example" : "", file);
    }

    /** Whether they hold for a unit that came on this day. */
    public boolean holdOn(LocalDate day) {
        return !day.isBefore(from) && to.map(last -> !day.isAfter(last)).orElse(true);
    }

    /** What must be there for a claim of this value. Of one whose value nobody knows, what every claim needs. */
    public List<Missing> needed(Optional<Amount> value) {
        Amount known = value.orElse(new Amount(0));
        return attachments.stream()
                .filter(each -> each.from().compareTo(known) <= 0)
                .flatMap(each -> each.needed().stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** Whether what these rules ask for depends on the claim's value. */
    public boolean askForTheValue() {
        return secondSignerAbove.isPresent()
                || attachments.stream().anyMatch(each -> each.from().cents() > 0);
    }

    /** Whether two persons must sign a decision about this value. */
    public boolean needsSecondSigner(Amount value) {
        return secondSignerAbove
                .map(limit -> value.compareTo(limit.value()) > 0)
                .orElse(false);
    }

    /** File and line of a rule. */
    public String where(int line) {
        return file + ":" + line;
    }
}
