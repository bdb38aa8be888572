package org.pumpwright.benchmarks.window;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Times in ns and the shares of them that were shorter. Confined to one thread. */
final class Times {
    private static final double MILLIS = 1e6;

    private final List<Long> nanos = new ArrayList<>();

    void add(long time) {
        nanos.add(time);
    }

    int count() {
        return nanos.size();
    }

    /** The least time that this share of all did not exceed (nearest rank), ms; not a number when there are none. */
    double millis(double share) {
        if (nanos.isEmpty()) {
            return Double.NaN;
        }
        List<Long> sorted = new ArrayList<>(nanos);
        Collections.sort(sorted);
        return sorted.get(Math.max(1, (int) Math.ceil(share * sorted.size())) - 1) / MILLIS;
    }
}
