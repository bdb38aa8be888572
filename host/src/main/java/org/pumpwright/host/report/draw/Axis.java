package org.pumpwright.host.report.draw;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * One axis of a chart, in the units that are shown, with ticks at 1, 2 or 5 times a power of ten. Thread-safe.
 *
 * @param from value at the begin
 * @param to value at the end, above the begin
 * @param step between ticks, above 0
 */
public record Axis(double from, double to, double step) {
    private static final double ROUNDING = 1e-9;

    /** The axis from 0 to at least the largest value, with about this many steps. */
    public static Axis toCover(double largest, int steps) {
        double end = largest > 0 && Double.isFinite(largest) ? largest : 1;
        double step = niceStep(end / steps);
        return new Axis(0, step * Math.ceil(end / step - ROUNDING), step);
    }

    private static double niceStep(double rough) {
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / power;
        if (share <= 1) {
            return power;
        }
        if (share <= 2) {
            return 2 * power;
        }
        return share <= 5 ? 5 * power : 10 * power;
    }

    /** The values at the ticks. */
    public List<Double> ticks() {
        int last = (int) Math.round((to - from) / step);
        return IntStream.rangeClosed(0, last).mapToObj(i -> from + i * step).toList();
    }

    /** The tick for a person, with as many decimals as the step has. */
    public String label(double tick) {
        int decimals = Math.max(0, (int) -Math.floor(Math.log10(step) + ROUNDING));
        return String.format(Locale.ROOT, "%." + decimals + "f", tick);
    }

    /** Where a value lies: 0 at the begin, 1 at the end. */
    public double share(double value) {
        return (value - from) / (to - from);
    }
}
