package org.pumpwright.benchmarks.judgement;

import java.util.Collection;
import java.util.Locale;
import java.util.function.Predicate;
import org.pumpwright.host.claim.statistics.Interval;

/** So many of so many, none included, as the tables show it: with its 95 % interval. Thread-safe. */
record Share(long hits, long of) {
    /** How many of these are so. */
    static <T> Share of(Collection<T> all, Predicate<? super T> so) {
        return new Share(all.stream().filter(so).count(), all.size());
    }

    double value() {
        return (double) hits / of;
    }

    double low() {
        return interval().low();
    }

    double high() {
        return interval().high();
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

    private Interval interval() {
        return new org.pumpwright.host.claim.statistics.Share(Math.toIntExact(hits), Math.toIntExact(of)).interval();
    }
}
