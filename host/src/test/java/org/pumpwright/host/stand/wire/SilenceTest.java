package org.pumpwright.host.stand.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Identity;

/** When a board is called silent, and when it must not be. */
@Timeout(30)
final class SilenceTest {
    private static final Duration PATIENCE = Duration.ofMillis(100);

    private final StandDescription description = TestStands.described("simulated");
    private final SimulatedBoard board = new SimulatedBoard(TestStands.healthyPump(), description.channels());
    private final BusyMachine machine = new BusyMachine();
    private int identitiesToLose;
    private boolean samplesLost;
    private final WireStand stand = new WireStand(description, this::opened, WireTiming.STANDARD);

    @Test
    void aBoardThatTookLongToAnswerTheHelloIsNotSilent() throws Exception {
        // Five hellos of 200 ms each, as a board that is reset by the opening of its port may need.
        identitiesToLose = 5;
        try (stand) {
            stand.open();

            assertThat(machine.nanoTime()).isGreaterThan(1_000_000_000L);
            assertThat(stand.await(PATIENCE)).get().isInstanceOf(Measured.class);
        }
    }

    @Test
    void aProgramThatWasKeptFromListeningDoesNotCallTheBoardSilent() throws Exception {
        try (stand) {
            stand.open();
            assertThat(stand.await(PATIENCE)).get().isInstanceOf(Measured.class);

            machine.keepsEverybodyWaiting(Duration.ofMillis(700));

            assertThat(stand.await(PATIENCE)).get().isInstanceOf(Measured.class);
        }
    }

    @Test
    void aBoardWithoutSamplesIsSilent() throws Exception {
        try (stand) {
            stand.open();
            assertThat(stand.await(PATIENCE)).get().isInstanceOf(Measured.class);
            samplesLost = true;
            long began = machine.nanoTime();

            assertThatThrownBy(this::awaitForASecond)
                    .isInstanceOfSatisfying(
                            StandException.class, e -> assertThat(e.trouble()).isEqualTo(Trouble.SILENT))
                    .hasMessageEndingWith(
                            "no sample for 500 ms. Check the board's supply and the cable, then start the run again.");
            assertThat(machine.nanoTime() - began).isBetween(450_000_000L, 700_000_000L);
        }
    }

    private void awaitForASecond() throws StandException {
        for (int i = 0; i < 10; i++) {
            assertThat(stand.await(PATIENCE)).isEmpty();
        }
    }

    private Line opened() {
        return new RewritingLine(machine, message -> isLost(message) ? Optional.empty() : Optional.of(message));
    }

    private boolean isLost(BoardMessage message) {
        return (message instanceof Identity && identitiesToLose-- > 0) || (samplesLost && Timeline.isSample(message));
    }

    /** A line whose clock goes on while neither the host nor the thread that reads for it gets to run. */
    private final class BusyMachine implements Line {
        private final Line line = new SimulatedLine(board, 0);
        private long awayNanos;
        private boolean readerAway;

        void keepsEverybodyWaiting(Duration time) {
            awayNanos += time.toNanos();
            readerAway = true;
        }

        @Override
        public String name() {
            return line.name();
        }

        @Override
        public void send(byte[] bytes) throws StandException {
            line.send(bytes);
        }

        @Override
        public int receive(byte[] into, Duration atMost) throws StandException {
            if (readerAway) {
                readerAway = false;
                return 0;
            }
            return line.receive(into, atMost);
        }

        @Override
        public long nanoTime() {
            return line.nanoTime() + awayNanos;
        }

        @Override
        public void close() {
            line.close();
        }
    }
}
