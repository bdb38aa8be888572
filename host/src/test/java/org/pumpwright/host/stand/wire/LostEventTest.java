package org.pumpwright.host.stand.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.Cause;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.Received;

/** A line that loses the word that the board made safe: it must be noticed all the same. */
@Timeout(30)
final class LostEventTest {
    private final StandDescription description = TestStands.described("simulated");
    private int toLose;
    private final SimulatedBoard board = new SimulatedBoard(TestStands.healthyPump(), description.channels());

    @Test
    void theBoardIsAskedForTheReasonThatWasLost() throws Exception {
        MadeSafe made = guardOpened(1);

        assertThat(made.cause()).isEqualTo(Cause.GUARD_OPEN);
        assertThat(made.words()).isEqualTo("the guard was opened");
    }

    @Test
    void theSamplesTellThatTheBoardIsSafeEvenWhenItsReasonIsLostForGood() throws Exception {
        MadeSafe made = guardOpened(Integer.MAX_VALUE);

        assertThat(made.cause()).isEqualTo(Cause.UNKNOWN);
        assertThat(made.words()).isEqualTo("the board made safe, its reason was lost on the line");
    }

    private MadeSafe guardOpened(int wordsLost) throws StandException {
        toLose = wordsLost;
        try (WireStand stand = new WireStand(description, EventEater::new, WireTiming.STANDARD)) {
            stand.open();
            stand.arm();
            board.setInputs(true, false);
            return madeSafe(stand);
        }
    }

    private static MadeSafe madeSafe(WireStand stand) throws StandException {
        for (int i = 0; i < 200; i++) {
            Optional<StandSignal> signal = stand.await(Duration.ofMillis(100));
            if (signal.isPresent() && signal.get() instanceof MadeSafe made) {
                return made;
            }
        }
        throw new AssertionError("nobody noticed");
    }

    private final class EventEater implements Line {
        private final Line line = new SimulatedLine(board, 0);
        private final List<byte[]> kept = new ArrayList<>();
        private final FrameDecoder decoder = FrameDecoder.synchronised(this::keep);

        private void keep(Received received) {
            if (received instanceof Received.Good good && !isLost(good)) {
                kept.add(FrameEncoder.encode(good.message(), good.sequence()));
            }
        }

        private boolean isLost(Received.Good good) {
            return good.message() instanceof Event event && event.kind() == EventKind.MADE_SAFE && toLose-- > 0;
        }

        @Override
        public String name() {
            return "line that loses events";
        }

        @Override
        public void send(byte[] bytes) throws StandException {
            line.send(bytes);
        }

        @Override
        public int receive(byte[] into, Duration atMost) throws StandException {
            decoder.receive(into, 0, line.receive(into, atMost));
            int count = 0;
            for (byte[] frame : kept) {
                System.arraycopy(frame, 0, into, count, frame.length);
                count += frame.length;
            }
            kept.clear();
            return count;
        }

        @Override
        public long nanoTime() {
            return line.nanoTime();
        }

        @Override
        public void close() {
            line.close();
        }
    }
}
