package org.pumpwright.host.ui.control;

import java.util.List;
import java.util.Locale;

/**
 * One group of runs that should repeat. Thread-safe.
 *
 * @param name in front of it
 * @param values one for each run
 * @param planned how many runs there are to be
 * @param bracketShare how far they may lie apart, as a share of their mean; not a number while that is not known
 */
public record RepeatLane(String name, List<Double> values, int planned, double bracketShare) {
    public RepeatLane {
        values = List.copyOf(values);
    }

    /** How far a value is from the middle of all, in brackets: 0 in the middle, 0.5 at the bracket's edge. */
    double place(double value) {
        return (value - (least() + most()) / 2) / mean() / bracketShare;
    }

    private double mean() {
        return values.stream().mapToDouble(each -> each).average().orElse(0);
    }

    private double least() {
        return values.stream().mapToDouble(each -> each).min().orElse(0);
    }

    private double most() {
        return values.stream().mapToDouble(each -> each).max().orElse(0);
    }

    private double rangeShare() {
        return values.size() < 2 ? 0 : (most() - least()) / mean();
    }

    /** Whether they lie further apart than they may. */
    boolean tooFar() {
        return rangeShare() > bracketShare;
    }

    String count() {
        return "%d/%d".formatted(values.size(), planned);
    }

    /** How far apart they are, and how far they may be; only the latter while there are too few to tell. */
    String spread() {
        if (Double.isNaN(bracketShare)) {
            return "";
        }
        return values.size() < 2
                ? String.format(Locale.ROOT, "≤ %.2f %%", 100 * bracketShare)
                : String.format(
                        Locale.ROOT, "%.2f %s %.2f %%", 100 * rangeShare(), tooFar() ? ">" : "≤", 100 * bracketShare);
    }
}
