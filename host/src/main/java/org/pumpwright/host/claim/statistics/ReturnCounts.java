package org.pumpwright.host.claim.statistics;

import java.util.List;
import java.util.Optional;

/**
 * Returns, and what they turned out to be. A return is not yet a failure; the two are never added up. Thread-safe.
 *
 * @param returns all that came in
 * @param open of these without a finding yet
 * @param confirmed outside limits
 * @param noFaultFound within limits, or the cause lay elsewhere
 * @param inconclusive the stand could not tell
 * @param notTestable could not be tested as they came
 */
public record ReturnCounts(int returns, int open, int confirmed, int noFaultFound, int inconclusive, int notTestable) {
    /** Counts them. */
    public static ReturnCounts of(List<ReturnFact> facts) {
        return new ReturnCounts(
                facts.size(),
                Math.toIntExact(facts.stream().filter(fact -> !fact.concluded()).count()),
                count(facts, Outcome.CONFIRMED_FAILURE),
                count(facts, Outcome.NO_FAULT_FOUND),
                count(facts, Outcome.INCONCLUSIVE),
                count(facts, Outcome.NOT_TESTABLE));
    }

    /** Claims with a finding. */
    public int concluded() {
        return returns - open;
    }

    /** Share of the concluded claims in which no fault was found; empty while none is concluded. */
    public Optional<Share> noFaultFoundShare() {
        return ofConcluded(noFaultFound);
    }

    /** Share of the concluded claims with a confirmed failure; empty while none is concluded. */
    public Optional<Share> confirmedShare() {
        return ofConcluded(confirmed);
    }

    private Optional<Share> ofConcluded(int hits) {
        return concluded() == 0 ? Optional.empty() : Optional.of(new Share(hits, concluded()));
    }

    private static int count(List<ReturnFact> facts, Outcome outcome) {
        return Math.toIntExact(facts.stream().filter(fact -> fact.is(outcome)).count());
    }
}
