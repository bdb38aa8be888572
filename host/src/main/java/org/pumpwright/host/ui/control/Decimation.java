package org.pumpwright.host.ui.control;

import java.util.Arrays;

/**
 * The line through a series as columns of pixels: for each column the lowest and the highest value that the line has there. However
 * many values a column holds, no peak is lost, and a line that is drawn from the columns looks as if it were drawn from all of them.
 * Confined to one thread.
 */
public final class Decimation {
    private final double[] low;
    private final double[] high;

    /** For this many columns. */
    public Decimation(int columns) {
        if (columns < 1) {
            throw new IllegalArgumentException("a line needs at least one column, not " + columns);
        }
        low = new double[columns];
        high = new double[columns];
    }

    /** How many columns there are. */
    public int columns() {
        return low.length;
    }

    /** The lowest value in a column; no number where the line does not pass. */
    public double low(int column) {
        return low[column];
    }

    /** The highest value in a column; no number where the line does not pass. */
    public double high(int column) {
        return high[column];
    }

    /**
     * Takes the part of a series between two times. The line enters and leaves at its true height; a value that is no number
     * interrupts it.
     *
     * @param from time at the left edge of the first column, in seconds
     * @param to time at the right edge of the last column, later than from
     */
    public void take(TimeSeries series, double from, double to) {
        if (!(to > from)) {
            throw new IllegalArgumentException("a line from %s s to %s s has no length".formatted(from, to));
        }
        Arrays.fill(low, Double.NaN);
        Arrays.fill(high, Double.NaN);
        double columnsPerSecond = low.length / (to - from);
        int first = Math.max(0, series.from(from) - 1);
        double x1 = Double.NaN;
        double y1 = Double.NaN;
        for (int i = first; i < series.size(); i++) {
            double x2 = (series.second(i) - from) * columnsPerSecond;
            double y2 = series.value(i);
            if (!Double.isNaN(y1) && !Double.isNaN(y2)) {
                segment(x1, y1, x2, y2);
            } else if (!Double.isNaN(y2)) {
                point(x2, y2);
            }
            if (x2 > low.length) {
                return;
            }
            x1 = x2;
            y1 = y2;
        }
    }

    private void segment(double x1, double y1, double x2, double y2) {
        int begin = (int) Math.floor(x1);
        int end = (int) Math.floor(x2);
        if (begin == end) {
            if (begin >= 0 && begin < low.length) {
                widen(begin, y1);
                widen(begin, y2);
            }
            return;
        }
        double slope = (y2 - y1) / (x2 - x1);
        for (int column = Math.max(begin, 0); column <= Math.min(end, low.length - 1); column++) {
            widen(column, y1 + slope * (Math.max(x1, column) - x1));
            widen(column, y1 + slope * (Math.min(x2, column + 1) - x1));
        }
    }

    private void point(double x, double y) {
        int column = (int) Math.floor(x);
        if (column >= 0 && column < low.length) {
            widen(column, y);
        }
    }

    private void widen(int column, double value) {
        // Written so that the no-number of an empty column gives way to the first value.
        if (!(low[column] <= value)) {
            low[column] = value;
        }
        if (!(high[column] >= value)) {
            high[column] = value;
        }
    }
}
