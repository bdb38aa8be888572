package org.pumpwright.host.run;

import java.util.List;
import org.pumpwright.host.trace.Sample;

/** Counts the samples that never arrived, from the gaps in the board's time. Thread-safe. */
final class SampleGaps {
    private SampleGaps() {}

    static long lost(List<Sample> samples) {
        if (samples.size() < 3) {
            return 0;
        }
        long[] gaps = new long[samples.size() - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = samples.get(i + 1).boardNanos() - samples.get(i).boardNanos();
        }
        long[] sorted = gaps.clone();
        java.util.Arrays.sort(sorted);
        double period = Math.max(1, sorted[sorted.length / 2]);
        long lost = 0;
        for (long gap : gaps) {
            lost += Math.max(0, Math.round(gap / period) - 1);
        }
        return lost;
    }
}
