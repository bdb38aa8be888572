package org.pumpwright.host.stand.serial;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.pumpwright.host.bench.BoardProcess;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandContract;
import org.pumpwright.host.stand.wire.WireTiming;

/** The portable firmware, built for the PC, behind a pseudo-terminal and the serial library. */
final class PcBoardStandTest extends StandContract {
    private BoardProcess board;

    @BeforeEach
    void start() {
        board = BoardProcess.pc();
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
}
