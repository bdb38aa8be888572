package org.pumpwright.host.stand.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.protocol.SampleKind;

/** Fast streams arrive without a gap. Times are the board's, so that a busy machine changes nothing. */
@Timeout(120)
final class StreamingTest {
    private static final long NANOS_PER_SECOND = 1_000_000_000;

    @Test
    void aThousandSamplesASecondArriveFromTheSimulatedBoardForAMinute() throws Exception {
        StandDescription description = TestStands.described("simulated");
        SimulatedBoard board = new SimulatedBoard(TestStands.healthyPump(), description.channels());
        WireTiming timing = WireTiming.STANDARD.withSamples(1, SampleKind.WHOLE);
        try (WireStand stand = new WireStand(description, () -> new SimulatedLine(board, 0), timing)) {
            assertThat(samplesWithoutAGap(stand, 60, 1)).isEqualTo(60_000);
        }
    }

    @Test
    void fiveHundredShortSamplesASecondArriveFromTheMicrocontroller() throws Exception {
        StandDescription description = TestStands.described("serial");
        WireTiming timing = WireTiming.STANDARD.withSamples(2, SampleKind.SHORT);
        try (EmulatedBoard board = EmulatedBoard.inLockstep(TestStands.healthyPump(), description.channels());
                WireStand stand = new WireStand(description, () -> board.line(board.port(), 250_000), timing)) {
            assertThat(samplesWithoutAGap(stand, 10, 2)).isEqualTo(5_000);
        }
    }

    /** Drives the unit and counts the samples of so many seconds after the first one. */
    private static int samplesWithoutAGap(WireStand stand, int seconds, int periodMillis) throws StandException {
        double periodNanos = periodMillis * 1e6;
        stand.open();
        stand.arm();
        stand.drive(0, Duty.ofPercent(60), 0.5);
        Sample first = sample(stand);
        Sample last = first;
        int count = 0;
        for (long end = first.boardNanos() + seconds * NANOS_PER_SECOND; last.boardNanos() < end - periodNanos / 2; ) {
            last = sample(stand);
            count++;
            // The microcontroller's moments have the jitter of its main loop; a lost sample would be a whole period.
            assertThat((double) last.boardNanos())
                    .as("moment of sample %d, ns", count)
                    .isCloseTo(first.boardNanos() + count * periodNanos, within(periodNanos / 2.0));
        }
        assertThat(last.meters().get(0).edges() - first.meters().get(0).edges()).isGreaterThan(seconds * 20L);
        LinkCounts counts = stand.link();
        assertThat(counts).isEqualTo(new LinkCounts(counts.received(), 0, 0, 0));
        assertThat(counts.received()).isGreaterThan(count);
        return count;
    }

    private static Sample sample(WireStand stand) throws StandException {
        while (true) {
            Optional<StandSignal> signal = stand.await(Duration.ofSeconds(1));
            if (signal.isPresent()) {
                assertThat(signal.get()).isInstanceOf(Measured.class);
                return ((Measured) signal.get()).sample();
            }
        }
    }
}
