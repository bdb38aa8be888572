package org.pumpwright.host.claim.statistics;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How often a mode was the confirmed failure. Thread-safe.
 *
 * @param mode its code; empty where none was determined
 * @param share of the confirmed failures
 */
public record ModeCount(Optional<String> mode, Share share) {
    /** Of the confirmed failures among these, most frequent first. */
    static List<ModeCount> of(List<ReturnFact> facts) {
        List<ReturnFact> confirmed = facts.stream()
                .filter(fact -> fact.is(Outcome.CONFIRMED_FAILURE))
                .toList();
        Map<String, Integer> counts = new TreeMap<>();
        confirmed.forEach(fact -> counts.merge(fact.mode().orElse(""), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(entry -> new ModeCount(
                        Optional.of(entry.getKey()).filter(code -> !code.isEmpty()),
                        new Share(entry.getValue(), confirmed.size())))
                .sorted((a, b) -> Integer.compare(b.share().hits(), a.share().hits()))
                .toList();
    }
}
