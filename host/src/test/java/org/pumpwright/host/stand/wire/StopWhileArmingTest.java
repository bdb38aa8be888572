package org.pumpwright.host.stand.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
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
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.MessageType;
import org.pumpwright.protocol.Received;

/** STOP is pressed between the arm's acknowledge and its proof, and the line loses the frame that asks for safe. */
@Timeout(30)
final class StopWhileArmingTest {
    private final StandDescription description = TestStands.described("simulated");
    private final SimulatedBoard board = new SimulatedBoard(TestStands.healthyPump(), description.channels());
    private final WireStand stand = new WireStand(description, this::opened, WireTiming.STANDARD);
    private boolean pressed;

    @Test
    void noSignOfLifeKeepsTheBoardArmed() throws Exception {
        try (stand) {
            stand.open();
            stand.arm();

            MadeSafe made = madeSafe();

            assertThat(pressed).isTrue();
            assertThat(made.cause()).isEqualTo(Cause.LINK_LOST);
        }
    }

    /** Within two seconds of the board's time, which must be more than its link time-out. */
    private MadeSafe madeSafe() throws StandException {
        for (int i = 0; i < 100; i++) {
            Optional<StandSignal> signal = stand.await(Duration.ofMillis(20));
            if (signal.isPresent() && signal.get() instanceof MadeSafe made) {
                return made;
            }
        }
        throw new AssertionError("the board is still armed");
    }

    private Line opened() {
        return new RewritingLine(new Deaf(), message -> {
            pressOnAcknowledgeOfArm(message);
            return Optional.of(message);
        });
    }

    private void pressOnAcknowledgeOfArm(BoardMessage message) {
        if (message instanceof Acknowledge answer && answer.answeredType() == MessageType.ARM.code()) {
            pressed = true;
            stand.makeSafe();
        }
    }

    /** Loses what asks for safe once STOP was pressed. */
    private final class Deaf implements Line {
        private final Line line = new SimulatedLine(board, 0);
        private final FrameDecoder sent = new FrameDecoder(this::sent);
        private boolean lost;

        private void sent(Received frame) {
            lost = pressed && frame instanceof Received.Good good && good.message() instanceof MakeSafe;
        }

        @Override
        public String name() {
            return line.name();
        }

        @Override
        public void send(byte[] bytes) throws StandException {
            lost = false;
            sent.receive(bytes);
            if (!lost) {
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
