package org.pumpwright.benchmarks.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Times in ns, and the shares of them that were shorter. Thread-safe. */
final class Latencies {
    private static final double NANOS_PER_MILLI = 1e6;

    private final List<Long> nanos = new ArrayList<>();

    synchronized void add(long time) {
        nanos.add(time);
    }

    synchronized int count() {
        return nanos.size();
    }

    /** The least time that this share of all did not exceed (nearest rank), ms; not a number when there are none. */
    synchronized double millis(double share) {
        if (nanos.isEmpty()) {
            return Double.NaN;
        }
        List<Long> sorted = new ArrayList<>(nanos);
        Collections.sort(sorted);
        int rank = Math.max(1, (int) Math.ceil(share * sorted.size()));
        return sorted.get(rank - 1) / NANOS_PER_MILLI;
    }
}
