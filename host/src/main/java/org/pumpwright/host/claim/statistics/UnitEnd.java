package org.pumpwright.host.claim.statistics;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/**
 * How a unit's watched life ended: the first confirmed failure, or a return that left open what it is. A unit in which no fault was
 * found went back to work and has not ended. Thread-safe.
 *
 * @param month of the return
 * @param failed whether a failure was confirmed; otherwise it was taken off without one
 * @param mode of the failure; empty where none was determined
 */
public record UnitEnd(YearMonth month, boolean failed, Optional<String> mode) {
    /** The end of a unit by its returns, in the order they came in; empty when it still serves. */
    static Optional<UnitEnd> of(List<ReturnFact> returns) {
        for (ReturnFact fact : returns) {
            if (fact.is(Outcome.CONFIRMED_FAILURE)) {
                return Optional.of(new UnitEnd(YearMonth.from(fact.returned()), true, fact.mode()));
            }
        }
        ReturnFact last = returns.get(returns.size() - 1);
        return last.is(Outcome.NO_FAULT_FOUND)
                ? Optional.empty()
                : Optional.of(new UnitEnd(YearMonth.from(last.returned()), false, Optional.empty()));
    }
}
