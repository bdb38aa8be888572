package org.pumpwright.host.grade.finding;

import java.util.Optional;
import org.pumpwright.host.quantity.Uncertain;

/**
 * When a flow came to stay near its final value. It is looked at in means over 0.25 s or three pulses, whichever is longer;
 * the flow came in somewhere within one of them of the end of the last mean outside, rectangular (JCGM 100, 4.3.7).
 * Thread-safe.
 */
final class SteadyFrom {
    private static final double BIN_SECONDS = 0.25;
    private static final int LEAST_PULSES = 3;

    private SteadyFrom() {}

    /**
     * Seconds after the begin of the window; empty where the flow was outside to the last.
     *
     * @param meter its number on the board
     * @param finalHertz the final value, above 0
     * @param share how near is near, as a share of it
     */
    static Optional<Uncertain> of(Window window, int meter, double finalHertz, double share) {
        double[] times = window.times();
        double[] lastEdges = window.lastEdges(meter);
        long[] edges = window.edges(meter);
        double outsideUntil = 0;
        double width = BIN_SECONDS;
        boolean inside = false;
        int from = 0;
        for (int i = 1; i < times.length; i++) {
            long pulses = edges[i] - edges[from];
            if (times[i] - times[from] < BIN_SECONDS || pulses < LEAST_PULSES) {
                continue;
            }
            double hertz = pulses / (lastEdges[i] - lastEdges[from]);
            inside = Math.abs(hertz / finalHertz - 1) <= share;
            if (!inside) {
                outsideUntil = times[i];
                width = Math.min(times[i] - times[from], 2 * Math.max(BIN_SECONDS, LEAST_PULSES / finalHertz));
            }
            from = i;
        }
        return inside ? Optional.of(Uncertain.of(outsideUntil, width / Math.sqrt(3))) : Optional.empty();
    }
}
