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
import org.pumpwright.protocol.MeterTrack;

/**
 * Turns the samples of one boot of a board into samples whose times and counts only grow. Time and counts are 0 at the first
 * sample. Confined to the run thread.
 */
final class Timeline {
    private static final double NANOS_PER_SECOND = 1e9;

    private final Identity board;
    private final BoardClock clock;
    private final List<Meter> meters = new ArrayList<>();
    private long firstTicks = -1;

    Timeline(Identity board) {
        this.board = board;
        clock = new BoardClock(board.tickHz());
        for (int i = 0; i < board.channels().meters(); i++) {
            meters.add(new Meter());
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

    private final class Meter {
        private final MeterTrack track = new MeterTrack(clock);
        private long first = -1;

        MeterCount next(org.pumpwright.protocol.MeterCount raw) {
            track.advance(raw);
            if (first < 0) {
                first = track.count();
            }
            return new MeterCount(track.count() - first, track.hasEdge() ? nanos(track.lastEdge()) : 0);
        }
    }
}
