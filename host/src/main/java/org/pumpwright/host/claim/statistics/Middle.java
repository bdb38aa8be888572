package org.pumpwright.host.claim.statistics;

import java.util.List;
import java.util.Optional;

/**
 * Middle and ends of figures that lie unevenly, as times at a desk do. Thread-safe.
 *
 * @param count how many
 * @param least the least
 * @param median half lie below
 * @param greatest the greatest
 */
public record Middle(int count, double least, double median, double greatest) {
    /** Of these; empty of none. */
    static Optional<Middle> of(List<Double> values) {
        if (values.isEmpty()) {
            return Optional.empty();
        }
        List<Double> sorted = values.stream().sorted().toList();
        int n = sorted.size();
        return Optional.of(
                new Middle(n, sorted.get(0), (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2, sorted.get(n - 1)));
    }
}
