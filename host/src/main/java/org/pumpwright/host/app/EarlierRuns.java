package org.pumpwright.host.app;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RecordHead;

/**
 * The runs of a unit that came before, within the same job: same serial, model and plan, any version of it, none longer ago
 * than a week, and back to the one that began the job. Only runs that say something of the unit count: one that was INVALID
 * uses up no retest. At most two retests are run without a person's decision, so that nothing is tested until it passes.
 * Common practice, no source. Thread-safe.
 *
 * @param counted oldest first
 * @param most runs of a unit in one job, the first and its retests, that need no decision
 * @param decision who lets the unit be run once more than that; empty where nobody had to
 */
public record EarlierRuns(List<RecordHead> counted, int most, Optional<Decision> decision) {
    /** How long a job lasts at most: what comes back later was most likely repaired meanwhile. */
    static final Duration JOB = Duration.ofDays(7);

    private static final Set<String> NO_SERIALS = Set.of("", "not given", "no plate");

    public EarlierRuns {
        counted = List.copyOf(counted);
    }

    /**
     * What is counted.
     *
     * @param serial as read from the plate
     * @param model id of the unit model
     * @param planId id of the plan without its version
     * @param practice whether the unit is simulated or invented; such runs never count for a real unit
     */
    record Unit(String serial, String model, String planId, boolean practice) {
        private boolean is(RecordHead run) {
            return run.regradedFrom().isEmpty()
                    && same(run.serial(), serial)
                    && run.model().equals(model)
                    && run.plan().replaceFirst(" v\\d+$", "").equals(planId)
                    && run.practice() == practice;
        }
    }

    /** Whether units are told apart by this text: an empty one, or one that says there is none, is no serial. */
    static boolean isSerial(String serial) {
        return !NO_SERIALS.contains(serial.strip().toLowerCase(Locale.ROOT));
    }

    private static boolean same(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }

    /** The first run of a job. */
    static EarlierRuns none(int most) {
        return new EarlierRuns(List.of(), most, Optional.empty());
    }

    /** Looks through the records of the last week. */
    static EarlierRuns of(Unit unit, int most, RecordFolder records, Instant now) {
        if (!isSerial(unit.serial())) {
            return none(most);
        }
        List<RecordHead> newestFirst = new ArrayList<>(records.since(now.minus(JOB)));
        newestFirst.removeIf(run -> !unit.is(run));
        Collections.reverse(newestFirst);
        List<RecordHead> counted = new ArrayList<>();
        for (RecordHead run : newestFirst) {
            if (saysSomething(run.verdict())) {
                counted.add(0, run);
            }
            if (run.attempt().orElse(0) == 1) {
                break;
            }
        }
        return new EarlierRuns(counted, most, Optional.empty());
    }

    private static boolean saysSomething(Verdict verdict) {
        return verdict == Verdict.PASS || verdict == Verdict.FAIL || verdict == Verdict.INCONCLUSIVE;
    }

    /** Which run the next one is, counted from 1. */
    public int attempt() {
        return counted.size() + 1;
    }

    /** Ids of the records, oldest first. */
    public List<String> ids() {
        return counted.stream().map(RecordHead::id).toList();
    }

    /**
     * Refuses a retest too many, unless a person has decided it. A decision that was not needed decides nothing and is not
     * kept.
     *
     * @throws OrderException naming the runs, and what to do
     */
    EarlierRuns allowed(String serial, Optional<Decision> given) throws OrderException {
        if (attempt() <= most) {
            return this;
        }
        if (given.isPresent()) {
            return new EarlierRuns(counted, most, given);
        }
        throw new OrderException(
                "unit %s had its %s runs of this job: %s. Testing until it passes proves nothing: change something (lead, prime, stand) and have a person decide with --decided-by NAME --reason TEXT; or, if it is back from repair, begin a --new-job."
                        .formatted(serial, counted.size(), words()));
    }

    /** Each with its verdict. */
    public String words() {
        return counted.stream()
                .map(run -> "%s (%s)".formatted(run.id(), run.verdict()))
                .collect(Collectors.joining(", "));
    }
}
