package org.pumpwright.host.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.KeepAlive;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.Received;

@Timeout(30)
final class SafePathTest {
    private final StandDescription description = TestStands.described("simulated");
    private final SimulatedBoard board = new SimulatedBoard(TestStands.healthyPump(), description.channels());
    private final LosingLine line = new LosingLine();

    @Test
    void aLostRequestIsMadeAgainAndNoSignOfLifeGoesOutMeanwhile() throws Exception {
        try (WireStand stand = armed()) {
            line.makeSafesToLose = 1;

            SafeState safe = SafePath.take(stand);

            assertThat(safe).isEqualTo(SafeState.CONFIRMED);
            assertThat(line.signsOfLifeAfterMakeSafe).isZero();
        }
    }

    @Test
    void aBoardThatHearsNothingMakesItselfSafeAndThatConfirms() throws Exception {
        try (WireStand stand = armed()) {
            line.makeSafesToLose = Integer.MAX_VALUE;

            assertThat(SafePath.take(stand)).isEqualTo(SafeState.CONFIRMED);
            assertThat(line.signsOfLifeAfterMakeSafe).isZero();
        }
    }

    @Test
    void aContactorThatStaysClosedIsHeardOf() throws Exception {
        try (WireStand stand = armed()) {
            board.holdFeedback(Optional.of(true));

            assertThat(SafePath.take(stand)).isEqualTo(SafeState.LOCKED);
        }
    }

    @Test
    void aLineThatIsGoneConfirmsNothing() throws Exception {
        try (WireStand stand = armed()) {
            line.line.unplug();

            assertThat(SafePath.take(stand)).isEqualTo(SafeState.NOT_CONFIRMED);
        }
    }

    @Test
    void aStandThatWasClosedMeanwhileConfirmsNothingAndThrowsNothing() throws Exception {
        WireStand stand = armed();
        stand.close();

        assertThat(SafePath.take(stand)).isEqualTo(SafeState.NOT_CONFIRMED);
    }

    private WireStand armed() throws StandException {
        WireStand stand = new WireStand(description, () -> line, WireTiming.STANDARD);
        stand.open();
        stand.arm();
        stand.drive(0, Duty.ofPercent(50), 0.5);
        return stand;
    }

    /** Loses as many make-safes as it is told, and counts the signs of life that follow one. */
    private final class LosingLine implements Line {
        private final SimulatedLine line = new SimulatedLine(board, 0);
        private int makeSafesToLose;
        private int signsOfLifeAfterMakeSafe;
        private boolean askedForSafe;
        private boolean lose;

        private final FrameDecoder decoder = FrameDecoder.synchronised(this::look);

        private void look(Received received) {
            if (received instanceof Received.Good good && good.message() instanceof MakeSafe) {
                askedForSafe = true;
                lose = makeSafesToLose-- > 0;
            } else if (received instanceof Received.Good good && good.message() instanceof KeepAlive && askedForSafe) {
                signsOfLifeAfterMakeSafe++;
            }
        }

        @Override
        public String name() {
            return "line that loses";
        }

        @Override
        public void send(byte[] bytes) throws StandException {
            lose = false;
            decoder.receive(bytes);
            if (!lose) {
                line.send(bytes);
            }
        }

        @Override
        public int receive(byte[] into, Duration atMost) throws StandException {
            return line.receive(into, atMost);
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
