package org.pumpwright.host.stand.simulated;

import org.pumpwright.protocol.PulseIntervals;
import org.pumpwright.protocol.PulseWindow;

/** The pulse windows of one meter: edges go in one after the other, a window comes out. Confined to the run thread. */
final class PulseStatistics {
    private static final long MASK_U32 = 0xFFFF_FFFFL;
    private static final int LONG_TIMES = 8;
    private static final int LONG_OF = 5;
    private static final int SHORT_TIMES = 2;

    private final int meter;
    private long begin;
    private boolean edgeKnown;
    private long edgeBefore;
    private long intervalBefore;
    private long reference;
    private Window window = new Window();

    PulseStatistics(int meter) {
        this.meter = meter;
    }

    /** Begins to watch, at a board time. */
    void begin(long time) {
        begin = time;
        edgeKnown = false;
        intervalBefore = 0;
        reference = 0;
        window = new Window();
    }

    /** Takes an edge at a board time. */
    void edge(long time) {
        if (window.edges == 0) {
            window.first = time;
        }
        window.last = time;
        window.edges++;
        if (edgeKnown) {
            interval((time - edgeBefore) & MASK_U32);
        }
        edgeKnown = true;
        edgeBefore = time;
    }

    private void interval(long ticks) {
        window.add(ticks, intervalBefore);
        if (reference > 0) {
            window.longs += ticks * LONG_OF > reference * LONG_TIMES ? 1 : 0;
            window.shorts += ticks * SHORT_TIMES < reference ? 1 : 0;
        }
        intervalBefore = ticks;
    }

    /** Ends the window at a board time; the next one begins there. */
    PulseWindow end(long time) {
        PulseWindow ended = window.closed(meter, begin, time, reference);
        reference = window.intervalCount == 0 ? 0 : window.sum / window.intervalCount;
        begin = time;
        window = new Window();
        return ended;
    }

    /** The sums of one window. */
    private static final class Window {
        private int edges;
        private long first;
        private long last;
        private int intervalCount;
        private long sum;
        private long squares;
        private long lagged;
        private long least;
        private long most;
        private int longs;
        private int shorts;

        void add(long ticks, long before) {
            least = intervalCount == 0 ? ticks : Math.min(least, ticks);
            most = Math.max(most, ticks);
            intervalCount++;
            sum += ticks;
            squares += ticks * ticks;
            lagged += ticks * before;
        }

        PulseWindow closed(int meter, long begin, long end, long reference) {
            PulseIntervals intervals =
                    new PulseIntervals(intervalCount, sum, squares, lagged, least, most, longs, shorts, reference);
            return new PulseWindow(meter, begin, end, edges, first, last, intervals);
        }
    }
}
