package org.pumpwright.benchmarks.judgement;

import java.util.Collection;
import java.util.Locale;
import java.util.function.Predicate;

/**
 * So many of so many, with Wilson's 95 % interval (E. B. Wilson, Journal of the American Statistical Association 22 (1927)
 * 209). Thread-safe.
 */
record Share(long hits, long of) {
    private static final double Z = 1.959964;

    /** How many of these are so. */
    static <T> Share of(Collection<T> all, Predicate<? super T> so) {
        return new Share(all.stream().filter(so).count(), all.size());
    }

    double value() {
        return (double) hits / of;
    }

    double low() {
        return Math.max(0, middle() - half());
    }

    double high() {
        return Math.min(1, middle() + half());
    }

    /** As {@code 12 (0.6 %; 0.3 to 1.0 %)}. */
    String text() {
        return of == 0
                ? "-"
                : String.format(
                        Locale.ROOT, "%d (%.2f %%; %.2f to %.2f)", hits, 100 * value(), 100 * low(), 100 * high());
    }

    /** As {@code 83 (79..86)}, in percent. */
    String percent() {
        return of == 0
                ? "-"
                : String.format(Locale.ROOT, "%.0f (%.0f..%.0f)", 100 * value(), 100 * low(), 100 * high());
    }

    private double middle() {
        return (value() + Z * Z / (2 * of)) / (1 + Z * Z / of);
    }

    private double half() {
        double p = value();
        return Z * Math.sqrt(p * (1 - p) / of + Z * Z / (4.0 * of * of)) / (1 + Z * Z / of);
    }
}
