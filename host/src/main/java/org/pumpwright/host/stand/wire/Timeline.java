package org.pumpwright.host.stand.wire;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.protocol.AnalogWindow;
import org.pumpwright.protocol.BoardClock;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.RollOver;

/**
 * Turns the samples of one boot of a board into samples whose times and counts only grow. Time 0 is the first sample.
 * Confined to the run thread.
 */
final class Timeline {
    private static final double NANOS_PER_SECOND = 1e9;

    private final Identity board;
    private final BoardClock clock;
    private final List<MeterLine> meters = new ArrayList<>();
    private long firstTicks = -1;

    Timeline(Identity board) {
        this.board = board;
        clock = new BoardClock(board.tickHz());
        for (int i = 0; i < board.channels().meters(); i++) {
            meters.add(new MeterLine());
        }
    }

    Sample sample(org.pumpwright.protocol.Sample raw) {
        long ticks = clock.advance(raw.time());
        if (firstTicks < 0) {
            firstTicks = ticks;
        }
        List<MeterCount> counts = new ArrayList<>(meters.size());
        for (int i = 0; i < meters.size(); i++) {
            counts.add(meters.get(i).next(raw.meters().get(i)));
        }
        return new Sample(
                nanos(ticks),
                counts,
                raw.analogs().stream()
                        .limit(board.channels().analogs())
                        .map(Timeline::reading)
                        .toList(),
                raw.applied().stream()
                        .limit(board.channels().drives())
                        .map(parts -> new Duty(Math.toIntExact(parts)))
                        .toList(),
                raw.state() == BoardState.ARMED,
                raw.inputs().emergencyStopClosed(),
                raw.inputs().guardClosed());
    }

    /** The board's time of an event near the newest sample, ns; 0 when no sample has come yet. */
    long nanosNear(long time) {
        return firstTicks < 0 ? 0 : nanos(clock.near(time));
    }

    private long nanos(long ticks) {
        return Math.round((ticks - firstTicks) * (NANOS_PER_SECOND / board.tickHz()));
    }

    private static AnalogReading reading(AnalogWindow window) {
        return new AnalogReading(window.mean(), window.min(), window.max());
    }

    /** One meter's count. Its last edge is only placed anew when it moved: an old time stamp could have rolled over. */
    private final class MeterLine {
        private final RollOver edges = new RollOver();
        private long lastCount = -1;
        private long lastEdgeNanos;

        MeterCount next(org.pumpwright.protocol.MeterCount raw) {
            long count = edges.advance(raw.count());
            if (count != lastCount) {
                lastCount = count;
                lastEdgeNanos = count == 0 ? 0 : nanos(clock.before(raw.lastEdge()));
            }
            return new MeterCount(count, lastEdgeNanos);
        }
    }
}
