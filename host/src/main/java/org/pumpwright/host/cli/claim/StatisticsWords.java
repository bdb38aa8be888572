package org.pumpwright.host.cli.claim;

import java.util.Locale;
import org.pumpwright.host.claim.statistics.Interval;
import org.pumpwright.host.claim.statistics.Share;

/** Figures of the statistics page: no rate without its interval. Thread-safe. */
final class StatisticsWords {
    private static final double MOST_PLAIN = 10_000;

    private StatisticsWords() {}

    /** As {@code 9 of 26: 35 % (19 to 54 %)}. */
    static String share(Share share, String of) {
        Interval interval = share.interval();
        return "%d of %d%s: %s %% (%s to %s %%)"
                .formatted(
                        share.hits(),
                        share.of(),
                        of,
                        percent(share.value()),
                        percent(interval.low()),
                        percent(interval.high()));
    }

    static String percent(double share) {
        double percent = 100 * share;
        return String.format(Locale.ROOT, percent > 0 && percent < 9.95 ? "%.1f" : "%.0f", percent);
    }

    /** Three figures, or a word for what lies beyond any meaning. */
    static String figure(double value) {
        if (value >= MOST_PLAIN) {
            return "over 10000";
        }
        int decimals = value >= 99.5 || value == 0 ? 0 : value >= 9.95 ? 1 : 2;
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** A whole number without decimals, anything else in three figures. */
    static String plain(double value) {
        return value == Math.rint(value) && value < MOST_PLAIN
                ? String.format(Locale.ROOT, "%.0f", value)
                : figure(value);
    }

    /** As {@code 2.14 (1.62 to 2.75)}. */
    static String estimate(double value, Interval interval) {
        return "%s (%s to %s)".formatted(figure(value), figure(interval.low()), figure(interval.high()));
    }

    static String count(int many, String one, String more) {
        return many + " " + (many == 1 ? one : more);
    }
}
