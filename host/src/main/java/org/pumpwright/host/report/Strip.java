package org.pumpwright.host.report;

import org.pumpwright.host.grade.FeatureJudgement;

/** A feature's place against its healthy range as one line of characters. Thread-safe. */
final class Strip {
    static final String LEGEND = "[ ] healthy range  | its mean  # measured  < > off the strip";

    private static final int WIDTH = 41;
    private static final int CENTRE = WIDTH / 2;
    /** Columns from the mean to a limit. */
    private static final int HALF_BAND = 7;

    private Strip() {}

    static String of(FeatureJudgement feature) {
        StringBuilder strip = new StringBuilder("-".repeat(WIDTH));
        strip.replace(CENTRE - HALF_BAND, CENTRE + HALF_BAND + 1, "=".repeat(2 * HALF_BAND + 1));
        strip.setCharAt(CENTRE - HALF_BAND, '[');
        strip.setCharAt(CENTRE + HALF_BAND, ']');
        strip.setCharAt(CENTRE, '|');
        int column = column(feature);
        if (column < 0) {
            strip.setCharAt(0, '<');
        } else if (column >= WIDTH) {
            strip.setCharAt(WIDTH - 1, '>');
        } else {
            strip.setCharAt(column, '#');
        }
        return strip.toString();
    }

    /** The limits are drawn at the same place on both sides, so each side has its own scale. */
    private static int column(FeatureJudgement feature) {
        double from = feature.measured().value() - feature.centre();
        double half = from < 0
                ? feature.centre() - feature.limits().low()
                : feature.limits().high() - feature.centre();
        double columns = Math.max(-WIDTH, Math.min(WIDTH, from / half * HALF_BAND));
        return CENTRE + (int) Math.round(from == 0 ? 0 : columns);
    }
}
