package org.pumpwright.host.signal;

import java.util.Set;

/**
 * What a pulse train looks like. Two candidates are a tie: the train cannot tell them apart, and another test must. None
 * means that the train is too short to judge. Thread-safe.
 *
 * @param candidates none, one or two
 * @param evidence the figures that decided, for people
 */
public record PulseDiagnosis(Set<PulseFault> candidates, String evidence) {
    private static final int MOST_CANDIDATES = 2;

    public PulseDiagnosis {
        candidates = Set.copyOf(candidates);
        if (candidates.size() > MOST_CANDIDATES) {
            throw new IllegalArgumentException(
                    "a diagnosis names %d candidates, at most 2 can tie".formatted(candidates.size()));
        }
    }

    /** True when this is one of the candidates. */
    public boolean names(PulseFault fault) {
        return candidates.contains(fault);
    }
}
