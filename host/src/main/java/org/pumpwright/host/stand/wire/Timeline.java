package org.pumpwright.host.stand.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.ObjIntConsumer;
import java.util.stream.IntStream;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.protocol.AnalogWindow;
import org.pumpwright.protocol.BoardClock;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.Inputs;
import org.pumpwright.protocol.MeterTrack;
import org.pumpwright.protocol.ShortSample;

/**
 * Turns the samples of one boot of a board, whole and short ones in any order, into samples whose times and counts only
 * grow. Time and counts are 0 at the first sample.
 *
 * <p>Both are exact as long as of the samples that arrive each is less than half the range of its fields later than the
 * one before: less than 2147483648 ticks (1073 s at 0.5 us) and, where it is a short one, fewer than 32768 edges. The
 * fields alone would allow twice as much, less than 2147 s and 65536 edges; the other half is given to readings that are
 * behind, so that none of them throws a count ahead. No line comes near: the stand is given up much sooner.
 *
 * <p>Confined to the run thread.
 */
final class Timeline {
    private static final double NANOS_PER_SECOND = 1e9;

    private final Identity board;
    private final BoardClock clock;
    private final List<Meter> meters = new ArrayList<>();
    private long firstTicks = -1;
    private long nowTicks;

    Timeline(Identity board) {
        this.board = board;
        clock = new BoardClock(board.tickHz());
        for (int i = 0; i < board.channels().meters(); i++) {
            meters.add(new Meter());
        }
    }

    static boolean isSample(BoardMessage message) {
        return message instanceof org.pumpwright.protocol.Sample || message instanceof ShortSample;
    }

    /** The sample that a message is; empty when it is none. */
    Optional<Sample> sample(BoardMessage message) {
        if (message instanceof org.pumpwright.protocol.Sample whole) {
            return Optional.of(whole(whole));
        }
        return message instanceof ShortSample shortOne ? Optional.of(shortOne(shortOne)) : Optional.empty();
    }

    private Sample whole(org.pumpwright.protocol.Sample raw) {
        advance(raw.time(), (track, i) -> track.advance(raw.meters().get(i)));
        return sample(
                i -> reading(raw.analogs().get(i)),
                i -> new Duty(Math.toIntExact(raw.applied().get(i))),
                raw.state(),
                raw.inputs());
    }

    private Sample shortOne(ShortSample raw) {
        advance(raw.time(), (track, i) -> track.advance(raw.meters().get(i)));
        return sample(
                i -> onlyMean(raw.means().get(i)),
                i -> new Duty(Math.toIntExact(raw.duty(i))),
                raw.state(),
                raw.inputs());
    }

    /** The clock goes first: edges are placed before it. */
    private void advance(long time, ObjIntConsumer<MeterTrack> reading) {
        nowTicks = clock.advance(time);
        if (firstTicks < 0) {
            firstTicks = nowTicks;
        }
        for (int i = 0; i < meters.size(); i++) {
            reading.accept(meters.get(i).track, i);
            meters.get(i).begin();
        }
    }

    private Sample sample(
            IntFunction<AnalogReading> analogs, IntFunction<Duty> applied, BoardState state, Inputs inputs) {
        return new Sample(
                nanos(nowTicks),
                meters.stream().map(Meter::count).toList(),
                upTo(board.channels().analogs(), analogs),
                upTo(board.channels().drives(), applied),
                state == BoardState.ARMED,
                inputs.emergencyStopClosed(),
                inputs.guardClosed());
    }

    /** The board's time of an event near the newest sample, ns; 0 when no sample has come yet. */
    long nanosNear(long time) {
        return firstTicks < 0 ? 0 : nanos(clock.near(time));
    }

    private long nanos(long ticks) {
        return Math.round((ticks - firstTicks) * (NANOS_PER_SECOND / board.tickHz()));
    }

    private static <T> List<T> upTo(int end, IntFunction<T> each) {
        return IntStream.range(0, end).mapToObj(each).toList();
    }

    private static AnalogReading reading(AnalogWindow window) {
        return new AnalogReading(window.mean(), window.min(), window.max());
    }

    /** A short sample does not tell least and most. */
    private static AnalogReading onlyMean(int mean) {
        return new AnalogReading(mean, mean, mean);
    }

    private final class Meter {
        private final MeterTrack track = new MeterTrack(clock);
        private long first = -1;

        /** The count of the first sample is 0. */
        void begin() {
            if (first < 0) {
                first = track.count();
            }
        }

        MeterCount count() {
            return new MeterCount(track.count() - first, track.hasEdge() ? nanos(track.lastEdge()) : 0);
        }
    }
}
