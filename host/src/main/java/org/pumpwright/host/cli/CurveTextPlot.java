package org.pumpwright.host.cli;

import java.util.Arrays;
import java.util.Locale;
import org.pumpwright.host.curve.Band;

/** A healthy curve as plain text: {@code o} its points, {@code *} the mean, {@code .} the limits. Thread-safe. */
final class CurveTextPlot {
    private static final int ROWS = 16;
    private static final int LABEL = 8;
    private static final int COLUMNS = WrappedText.COLUMNS - LABEL - 2;
    private static final int X_LABELS = 6;

    private final CurveSeries series;
    private final NiceScale scale;
    private final char[][] rows = new char[ROWS + 1][COLUMNS];

    private CurveTextPlot(CurveSeries series) {
        this.series = series;
        scale = NiceScale.toCover(series.largest(), 4);
        for (char[] row : rows) {
            Arrays.fill(row, ' ');
        }
    }

    static String of(CurveSeries series) {
        CurveTextPlot plot = new CurveTextPlot(series);
        plot.draw();
        return plot.text();
    }

    private void draw() {
        for (int column = 0; column < COLUMNS; column++) {
            Band band = series.band().apply(volts(column));
            put(column, band.low(), '.');
            put(column, band.high(), '.');
            put(column, band.centre(), '*');
        }
        for (double volts : series.pointVolts()) {
            double share = (volts - series.fromVolts()) / (series.toVolts() - series.fromVolts());
            put(
                    (int) Math.round(share * (COLUMNS - 1)),
                    series.band().apply(volts).centre(),
                    'o');
        }
    }

    private double volts(int column) {
        return series.fromVolts() + (series.toVolts() - series.fromVolts()) * column / (COLUMNS - 1);
    }

    /** What lies below the axis is not drawn. */
    private void put(int column, double value, char mark) {
        int row = ROWS - (int) Math.round(value / scale.end() * ROWS);
        if (row >= 0 && row <= ROWS) {
            rows[row][column] = mark;
        }
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        line(text, series.name() + "   (o points, * mean, . limits)");
        for (int row = 0; row <= ROWS; row++) {
            line(text, label(row) + " |" + new String(rows[row]).stripTrailing());
        }
        line(text, " ".repeat(LABEL + 1) + "+" + "-".repeat(COLUMNS));
        line(text, xLabels());
        line(text, "");
        return text.toString();
    }

    /** A tick is printed in the row next to it. */
    private String label(int row) {
        for (int tick = 0; tick <= scale.steps(); tick++) {
            if (ROWS - Math.round((double) tick / scale.steps() * ROWS) == row) {
                return String.format(Locale.ROOT, "%" + LABEL + "s", scale.label(tick));
            }
        }
        return " ".repeat(LABEL);
    }

    private String xLabels() {
        StringBuilder line = new StringBuilder(" ".repeat(LABEL + 2 + COLUMNS));
        for (int i = 0; i < X_LABELS; i++) {
            int column = (COLUMNS - 1) * i / (X_LABELS - 1);
            String label = String.format(Locale.ROOT, i == X_LABELS - 1 ? "%.1f V" : "%.1f", volts(column));
            int from = Math.min(LABEL + 2 + column - label.length() / 2, line.length() - label.length());
            line.replace(from, from + label.length(), label);
        }
        return line.toString().stripTrailing();
    }

    private static void line(StringBuilder text, String line) {
        text.append(line).append(System.lineSeparator());
    }
}
