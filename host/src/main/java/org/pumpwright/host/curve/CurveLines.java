package org.pumpwright.host.curve;

import java.util.List;

/**
 * Where the numbers of a curve stand in its file. Thread-safe.
 *
 * @param file on the shelf, e.g. {@code curves/demo-pump.yaml}
 * @param points line of each point, in their order
 * @param sets lines of each set of limits, in their order
 */
public record CurveLines(String file, List<Integer> points, List<SetLines> sets) {
    /** The shelf's folder of curves. */
    public static final String FOLDER = "curves";

    public CurveLines {
        points = List.copyOf(points);
        sets = List.copyOf(sets);
    }

    /**
     * Lines of one set of limits.
     *
     * @param guard line of its guard factor
     * @param limits line of each limit, in their order
     */
    public record SetLines(int guard, List<Integer> limits) {
        public SetLines {
            limits = List.copyOf(limits);
        }
    }
}
