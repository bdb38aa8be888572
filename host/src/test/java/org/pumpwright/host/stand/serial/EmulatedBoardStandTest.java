package org.pumpwright.host.stand.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandContract;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.StandSignal.Cause;
import org.pumpwright.host.stand.wire.WireTiming;

/** The microcontroller's own program in the emulator, behind a pseudo-terminal and the serial library, in real time. */
final class EmulatedBoardStandTest extends StandContract {
    private EmulatedBoard board;

    @BeforeEach
    void start() {
        board = EmulatedBoard.start(
                TestStands.healthyPump(), TestStands.described("serial").channels(), 1);
    }

    @AfterEach
    void end() {
        board.close();
    }

    @Override
    protected Stand stand() {
        return TestStands.serial(board.port(), WireTiming.STANDARD);
    }

    @Override
    protected Stand silentStand() {
        return TestStands.serial(board.port(), TestStands.SILENT);
    }

    @Test
    void anEmergencyStopMakesSafeWithoutTheHost() throws Exception {
        try (Stand stand = stand()) {
            stand.open();
            stand.arm();
            stand.drive(0, Duty.ofPercent(50), 0.5);
            sampleAfter(stand, 1);

            board.setInputs(false, true);

            assertThat(madeSafe(stand).cause()).isEqualTo(Cause.EMERGENCY_STOP);
            assertThat(sample(stand).applied().get(0)).isEqualTo(Duty.ZERO);
        }
    }

    @Test
    void aResetOfTheMicrocontrollerIsTroubleAndStartsSafe() throws Exception {
        try (Stand stand = stand()) {
            long firstBoot = stand.open().bootId();
            stand.arm();
            stand.drive(0, Duty.ofPercent(50), 0.5);
            sampleAfter(stand, 1);

            board.command("reset");

            assertThatThrownBy(() -> sampleAfter(stand, 5))
                    .isInstanceOfSatisfying(
                            StandException.class, e -> assertThat(e.trouble()).isEqualTo(Trouble.BOARD_RESET));
            assertThat(stand.open().bootId()).isNotEqualTo(firstBoot);
            assertThat(sample(stand).armed()).isFalse();
        }
    }
}
