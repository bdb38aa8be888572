package org.pumpwright.host.grade.cause;

import java.util.Optional;

/**
 * A likely cause of what was seen. Thread-safe.
 *
 * @param name in plain words
 * @param because the pattern in the figures that points to it
 * @param nextTest the test that would confirm it or split it from its rivals
 * @param numbers what stands behind it, for those who ask; empty in records from before it was kept
 */
public record Cause(String name, String because, String nextTest, Optional<Numbers> numbers) {
    /**
     * The figures behind a cause.
     *
     * @param share of all causes that were considered, each held as likely as any other beforehand; 0 to 1
     * @param behind natural logarithm of how many times less likely it is than the first; 0 for the first itself,
     *     negative for a fault that goes after nothing wrong because it beats it by no more than chance does
     * @param severity likeliest, 0 healthy to 1 the gravest of the atlas
     * @param misfit squared Mahalanobis distance of the readings from what units with this cause give
     * @param readings how many readings were weighed; a misfit about as large is usual
     */
    public record Numbers(double share, double behind, double severity, double misfit, int readings) {}

    /** A cause without its figures. */
    public Cause(String name, String because, String nextTest) {
        this(name, because, nextTest, Optional.empty());
    }
}
