package org.pumpwright.host.stand.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.protocol.AnalogRole;
import org.pumpwright.protocol.AnalogWindow;
import org.pumpwright.protocol.BoardKind;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.ChannelCounts;
import org.pumpwright.protocol.FirmwareVersion;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.Inputs;
import org.pumpwright.protocol.Received;
import org.pumpwright.protocol.ResetCause;
import org.pumpwright.protocol.SampleKind;
import org.pumpwright.protocol.ShortSample;
import org.pumpwright.protocol.UniqueId;

/** Boards whose truth is kept in numbers that don't roll over, and frames that get lost. */
final class TimelineTest {
    private static final long RANGE = 1L << 32;
    private static final long HALF_RANGE = 1L << 31;
    private static final long SHORT_HALF_RANGE = 1L << 15;
    private static final long NANOS_PER_TICK = 500;

    private static final Identity BOARD = new Identity(
            UniqueId.NONE,
            new FirmwareVersion(1, 0, 0),
            1,
            new ResetCause(ResetCause.POWER_ON),
            new ChannelCounts(2, 2, 4),
            1_000_000_000 / NANOS_PER_TICK,
            List.of(7812, 7812),
            List.of(AnalogRole.VOLTS, AnalogRole.SUPPLY_AMPS, AnalogRole.NONE, AnalogRole.NONE),
            new BoardKind("truth"));

    /** What happens from one sample that arrives to the next, and how many got lost between. */
    private record Stretch(long ticks, long edges, double lastEdgeAt, int lost, SampleKind kind) {}

    @Property(seed = "6201", tries = 1000)
    void wholeSamplesAreExactUpToHalfTheRangeOfTheirTimeAndCount(
            @ForAll @LongRange(max = RANGE - 1) long start, @ForAll("whole") List<Stretch> stretches) {
        exact(start, stretches);
    }

    @Property(seed = "6202", tries = 1000)
    void shortSamplesAreExactUpToHalfTheRangeOfTheirTimeAndCount(
            @ForAll @LongRange(max = RANGE - 1) long start, @ForAll("shortOnes") List<Stretch> stretches) {
        exact(start, stretches);
    }

    @Property(seed = "6203", tries = 1000)
    void bothKindsMayComeInAnyOrder(
            @ForAll @LongRange(max = RANGE - 1) long start, @ForAll("both") List<Stretch> stretches) {
        exact(start, stretches);
    }

    private static void exact(long start, List<Stretch> stretches) {
        Timeline timeline = new Timeline(BOARD);
        LinkTally tally = new LinkTally();
        Truth truth = new Truth(start);
        long lost = 0;
        long firstTime = 0;
        List<Long> firstEdges = List.of();
        for (Stretch stretch : stretches) {
            truth.run(stretch);
            BoardMessage frame = truth.sample(stretch.kind);
            tally.take(new Received.Good(truth.frameNumber, frame));
            Sample seen = timeline.sample(frame).orElseThrow();
            if (firstEdges.isEmpty()) {
                firstTime = truth.time;
                firstEdges = List.copyOf(truth.edges);
            } else {
                lost += stretch.lost;
            }
            assertThat(seen.boardNanos()).isEqualTo((truth.time - firstTime) * NANOS_PER_TICK);
            for (int i = 0; i < 2; i++) {
                long lastEdge = truth.edges.get(i) > 0 ? (truth.lastEdges.get(i) - firstTime) * NANOS_PER_TICK : 0;
                assertThat(seen.meters().get(i))
                        .isEqualTo(new MeterCount(truth.edges.get(i) - firstEdges.get(i), lastEdge));
            }
        }
        assertThat(tally.counts().lost()).isEqualTo(lost);
        assertThat(tally.counts().received()).isEqualTo(stretches.size());
    }

    @Example
    void aShortSampleTellsOfEachChannelTheMeanOnly() {
        ShortSample raw = ShortSample.of(whole(new AnalogWindow(300, 200, 400), 65_536));

        Sample seen = new Timeline(BOARD).sample(raw).orElseThrow();

        assertThat(seen.analogs().get(0)).isEqualTo(new AnalogReading(300, 300, 300));
        assertThat(seen.applied()).containsExactly(Duty.FULL, Duty.ZERO);
        assertThat(seen.armed()).isTrue();
        assertThat(seen.emergencyStopClosed()).isTrue();
        assertThat(seen.guardClosed()).isFalse();
    }

    @Example
    void aWholeSampleTellsLeastAndMostToo() {
        Sample seen = new Timeline(BOARD)
                .sample(whole(new AnalogWindow(300, 200, 400), 1234))
                .orElseThrow();

        assertThat(seen.analogs().get(0)).isEqualTo(new AnalogReading(300, 200, 400));
        assertThat(seen.applied()).containsExactly(new Duty(1234), Duty.ZERO);
        assertThat(seen.armed()).isTrue();
    }

    private static org.pumpwright.protocol.Sample whole(AnalogWindow first, long applied) {
        return new org.pumpwright.protocol.Sample(
                1,
                List.of(org.pumpwright.protocol.MeterCount.START, org.pumpwright.protocol.MeterCount.START),
                List.of(first, AnalogWindow.NONE, AnalogWindow.NONE, AnalogWindow.NONE),
                1,
                List.of(applied, 0L),
                BoardState.ARMED,
                new Inputs(true, false, true, true, true),
                1);
    }

    @Provide
    Arbitrary<List<Stretch>> whole() {
        return stretches(HALF_RANGE - 1, Arbitraries.just(SampleKind.WHOLE));
    }

    @Provide
    Arbitrary<List<Stretch>> shortOnes() {
        return stretches(SHORT_HALF_RANGE - 1, Arbitraries.just(SampleKind.SHORT));
    }

    @Provide
    Arbitrary<List<Stretch>> both() {
        return stretches(SHORT_HALF_RANGE - 1, Arbitraries.of(SampleKind.class));
    }

    private static Arbitrary<List<Stretch>> stretches(long mostEdges, Arbitrary<SampleKind> kinds) {
        Arbitrary<Long> ticks = Arbitraries.oneOf(
                Arbitraries.longs().between(2000, 200_000),
                Arbitraries.longs().between(1, HALF_RANGE - 1),
                Arbitraries.just(HALF_RANGE - 1));
        Arbitrary<Long> edges = Arbitraries.oneOf(
                Arbitraries.just(0L), Arbitraries.longs().between(0, mostEdges), Arbitraries.just(mostEdges));
        Arbitrary<Integer> lost = Arbitraries.oneOf(
                Arbitraries.just(0), Arbitraries.integers().between(0, 100), Arbitraries.just(32_767));
        return Combinators.combine(ticks, edges, Arbitraries.doubles().between(0, 1), lost, kinds)
                .as(Stretch::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(40);
    }

    /** A board with two meters, the second of which has half the edges of the first. */
    private static final class Truth {
        private long time;
        private int frameNumber;
        private final List<Long> edges = new ArrayList<>(List.of(0L, 0L));
        private final List<Long> lastEdges = new ArrayList<>(List.of(0L, 0L));

        Truth(long time) {
            this.time = time;
        }

        void run(Stretch stretch) {
            for (int i = 0; i < 2; i++) {
                long more = stretch.edges / (i + 1);
                if (more > 0) {
                    edges.set(i, edges.get(i) + more);
                    lastEdges.set(i, time + Math.round(stretch.ticks * stretch.lastEdgeAt));
                }
            }
            time += stretch.ticks;
            frameNumber = (frameNumber + stretch.lost + 1) & 0xFFFF;
        }

        BoardMessage sample(SampleKind kind) {
            org.pumpwright.protocol.Sample whole = new org.pumpwright.protocol.Sample(
                    time % RANGE,
                    List.of(meter(0), meter(1)),
                    List.of(AnalogWindow.NONE, AnalogWindow.NONE, AnalogWindow.NONE, AnalogWindow.NONE),
                    0,
                    List.of(0L, 0L),
                    BoardState.SAFE,
                    Inputs.ofBits(0),
                    1);
            return kind == SampleKind.WHOLE ? whole : ShortSample.of(whole);
        }

        private org.pumpwright.protocol.MeterCount meter(int number) {
            return new org.pumpwright.protocol.MeterCount(
                    (org.pumpwright.protocol.MeterCount.START_COUNT + edges.get(number)) % RANGE,
                    lastEdges.get(number) % RANGE);
        }
    }
}
