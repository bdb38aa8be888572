package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class MeterTrackTest {
    private static final long RANGE = 1L << 32;
    private static final long TICK_HZ = 2_000_000;

    private final BoardClock clock = new BoardClock(TICK_HZ);
    private final MeterTrack track = new MeterTrack(clock);

    @Test
    void aMeterAtItsStartHasHadNoEdge() {
        clock.advance(BoardClock.START_TIME);
        track.advance(MeterCount.START);
        assertThat(track.hasEdge()).isFalse();
        assertThatIllegalStateException().isThrownBy(track::lastEdge).withMessage("the meter has had no edge yet");
    }

    @Test
    void theFirstEdgeAtBoardTimeZeroIsAnEdge() {
        clock.advance(BoardClock.START_TIME);
        track.advance(MeterCount.START);
        long now = clock.advance(100);
        track.advance(new MeterCount(MeterCount.START_COUNT + 1, 0));
        assertThat(track.hasEdge()).isTrue();
        assertThat(now - track.lastEdge()).isEqualTo(100);
    }

    @Test
    void aMeterThatCountedBeforeItWasFirstReadHasAnEdge() {
        long now = clock.advance(40);
        track.advance(new MeterCount(5, RANGE - 60));
        assertThat(now - track.lastEdge()).isEqualTo(100);
    }

    @Test
    void theMomentOfAMeterThatStandsStillOutlivesTheRollOverOfItsTime() {
        clock.advance(1000);
        track.advance(new MeterCount(7, 900));
        long edge = track.lastEdge();
        for (int quarter = 1; quarter <= 12; quarter++) {
            clock.advance((1000 + quarter * (RANGE / 4)) & (RANGE - 1));
            track.advance(new MeterCount(7, 900));
        }
        clock.advance(5000);
        track.advance(new MeterCount(8, 4000));
        assertThat(track.lastEdge() - edge).isEqualTo(3 * RANGE + 4000 - 900);
    }

    @Test
    void afterARestartTheMeterIsReadAnew() {
        clock.advance(1000);
        track.advance(new MeterCount(7, 900));
        clock.restart();
        track.restart();
        clock.advance(BoardClock.START_TIME + 10);
        track.advance(MeterCount.START);
        assertThat(track.hasEdge()).isFalse();
        assertThat(track.count()).isEqualTo(MeterCount.START_COUNT);
    }

    /** The board's truth, kept in numbers that do not roll over. */
    private static final class Board {
        private long time;
        private long edges;
        private long lastEdge;

        Board(long startTime) {
            time = startTime;
        }

        void run(Step step) {
            if (step.edges > 0) {
                lastEdge = time + step.lastEdgeAfter;
                edges += step.edges;
            }
            time += step.ticks;
        }

        long timeOnWire() {
            return time & (RANGE - 1);
        }

        MeterCount count() {
            return new MeterCount(MeterCount.START_COUNT + edges & (RANGE - 1), lastEdge & (RANGE - 1));
        }
    }

    /** What happens between two samples, and what becomes of the second one. */
    private record Step(long ticks, long edges, long lastEdgeAfter, Fate fate) {}

    private enum Fate {
        WHOLE,
        SHORT,
        LOST
    }

    /** Seen by the host at one sample. */
    private record Reading(long clock, long edges, long lastEdge, boolean hasEdge, Board truth) {}

    @Property(seed = "5111", tries = 2000)
    void flowBetweenAnyTwoSamplesIsExactWhateverWasLostBetweenThem(
            @ForAll @LongRange(max = RANGE - 1) long start, @ForAll("steps") List<Step> steps) {
        holdsBetweenAnyTwo(start, steps);
    }

    @Property(seed = "5112", tries = 500)
    void aBoardThatJustStartedMeetsItsRollOversExactly(@ForAll("steps") List<Step> steps) {
        holdsBetweenAnyTwo(BoardClock.START_TIME, steps);
    }

    private static void holdsBetweenAnyTwo(long start, List<Step> steps) {
        List<Reading> readings = read(start, steps);
        for (Reading early : readings) {
            for (Reading late : readings) {
                assertThat(late.clock - early.clock).isEqualTo(late.truth.time - early.truth.time);
                assertThat(late.edges - early.edges).isEqualTo(late.truth.edges - early.truth.edges);
                if (early.hasEdge && late.hasEdge) {
                    assertThat(late.lastEdge - early.lastEdge).isEqualTo(late.truth.lastEdge - early.truth.lastEdge);
                }
            }
            assertThat(early.hasEdge).isEqualTo(early.truth.edges > 0);
            if (early.hasEdge) {
                assertThat(early.clock - early.lastEdge).isEqualTo(early.truth.time - early.truth.lastEdge);
            }
        }
    }

    private static List<Reading> read(long start, List<Step> steps) {
        BoardClock clock = new BoardClock(TICK_HZ);
        MeterTrack track = new MeterTrack(clock);
        Board board = new Board(start);
        List<Reading> readings = new ArrayList<>();
        int lostInARow = 0;
        readings.add(sample(board, clock, track, Fate.WHOLE));
        for (Step step : steps) {
            board.run(step);
            // Never more lost in a row than half the range of time and of the short count allows.
            if (step.fate == Fate.LOST && lostInARow < 6) {
                lostInARow++;
            } else {
                lostInARow = 0;
                readings.add(sample(board, clock, track, step.fate));
            }
        }
        return readings;
    }

    private static Reading sample(Board board, BoardClock clock, MeterTrack track, Fate fate) {
        long now = clock.advance(board.timeOnWire());
        if (fate == Fate.SHORT) {
            track.advance(ShortCount.of(board.count()));
        } else {
            track.advance(board.count());
        }
        Board truth = new Board(board.time);
        truth.edges = board.edges;
        truth.lastEdge = board.lastEdge;
        return new Reading(now, track.count(), track.hasEdge() ? track.lastEdge() : 0, track.hasEdge(), truth);
    }

    @Provide
    Arbitrary<List<Step>> steps() {
        Arbitrary<Long> ticks = Arbitraries.oneOf(
                Arbitraries.longs().between(2000, 2_000_000),
                Arbitraries.longs().between(1, (1L << 28) - 1),
                Arbitraries.just((1L << 28) - 1));
        Arbitrary<Long> edges = Arbitraries.frequencyOf(
                Tuple.of(2, Arbitraries.just(0L)),
                Tuple.of(2, Arbitraries.longs().between(0, 300)),
                Tuple.of(1, Arbitraries.longs().between(0, 4095)));
        Arbitrary<Fate> fates = Arbitraries.of(Fate.WHOLE, Fate.SHORT, Fate.LOST, Fate.LOST);
        return Combinators.combine(ticks, edges, Arbitraries.doubles().between(0, 1), fates)
                .as((time, count, part, fate) -> new Step(time, count, (long) (time * part), fate))
                .list()
                .ofMinSize(1)
                .ofMaxSize(60);
    }
}
