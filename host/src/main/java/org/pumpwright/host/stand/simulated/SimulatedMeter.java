package org.pumpwright.host.stand.simulated;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.pumpwright.protocol.MeterCount;
import org.pumpwright.protocol.PulseWindow;

/** One flow meter: each edge is counted and gets its board time. Confined to the run thread. */
final class SimulatedMeter {
    private static final long MASK_U32 = 0xFFFF_FFFFL;

    private final BoardTime time;
    private final PulseStatistics statistics;
    private final Deque<Long> toCome = new ArrayDeque<>();
    private long count = MeterCount.START_COUNT;
    private long lastEdge;
    private boolean windows;
    private double heldHz = -1;
    private double nextHeldNanos;

    SimulatedMeter(int number, BoardTime time) {
        this.time = time;
        statistics = new PulseStatistics(number);
    }

    /** Takes the edges of the next plant step. */
    void expect(long nowNanos, double[] offsetsSeconds) {
        if (heldHz >= 0) {
            return;
        }
        for (double offset : offsetsSeconds) {
            toCome.add(nowNanos + Math.round(offset * 1e9));
        }
    }

    /** Turns at a fixed frequency from now on, whatever flows; or follows the plant again when negative. */
    void hold(long nowNanos, double hz) {
        heldHz = hz;
        nextHeldNanos = nowNanos;
        toCome.clear();
    }

    void countBefore(long endNanos) {
        while (heldHz > 0 && nextHeldNanos < endNanos) {
            toCome.add(Math.round(nextHeldNanos));
            nextHeldNanos += 1e9 / heldHz;
        }
        while (!toCome.isEmpty() && toCome.peek() < endNanos) {
            count = (count + 1) & MASK_U32;
            lastEdge = time.ticksAt(toCome.remove());
            if (windows) {
                statistics.edge(lastEdge);
            }
        }
    }

    MeterCount count() {
        return new MeterCount(count, lastEdge);
    }

    void windows(boolean on) {
        windows = on;
        statistics.begin(time.ticks());
    }

    /** The window that ends now; empty while nobody asked for windows. */
    Optional<PulseWindow> takeWindow() {
        return windows ? Optional.of(statistics.end(time.ticks())) : Optional.empty();
    }

    void reset() {
        count = MeterCount.START_COUNT;
        lastEdge = 0;
        windows = false;
    }
}
