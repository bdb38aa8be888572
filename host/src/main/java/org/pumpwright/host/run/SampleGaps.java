package org.pumpwright.host.run;

import java.util.List;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

/** Counts the samples that never arrived, from the gaps in the board's time. Thread-safe. */
final class SampleGaps {
    private SampleGaps() {}

    /** Samples of a run that never arrived; while a person was waited for none are kept, and none are missed. */
    static long lost(Trace trace) {
        List<Sample> samples = trace.samples();
        if (samples.size() < 3) {
            return 0;
        }
        long[] gaps = new long[samples.size() - 1];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = waited(trace, samples.get(i))
                    ? 0
                    : samples.get(i + 1).boardNanos() - samples.get(i).boardNanos();
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

    private static boolean waited(Trace trace, Sample before) {
        return trace.stretches().stream()
                .anyMatch(stretch -> stretch.kind() == Stretch.Kind.WAIT && stretch.fromNanos() == before.boardNanos());
    }
}
