package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.BoardProcess;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.datafile.EditedFile;

@Timeout(60)
final class StandCommandsTest {
    /** Half a second of them: the contactor is proven within 200 ms. */
    private static final int EXCHANGES_PAST_THE_PROOF = 100;

    private final CommandLineBench bench = new CommandLineBench();

    @Test
    void findTellsWhichBoardIsOnWhichPort() {
        try (BoardProcess board = BoardProcess.pc()) {
            int exit = bench.run("stand", "find", "--also", board.port());

            assertThat(bench.out()).contains(board.port()).contains("board pc, firmware 1.0.0");
            assertThat(exit).isEqualTo(ExitCode.PASS);
        }
    }

    @Test
    void findTellsWhyAPortDidNotAnswer() {
        int exit = bench.run("stand", "find", "--also", "/dev/ttyNONE7");

        assertThat(bench.out()).contains("/dev/ttyNONE7").contains("there is no port /dev/ttyNONE7");
        assertThat(exit).isEqualTo(ExitCode.STAND);
    }

    @Test
    void showTellsWhatTheStandReadsAndArmsNothing() {
        try (EmulatedBoard board = EmulatedBoard.start(
                TestStands.healthyPump(), TestStands.described("serial").channels(), 1)) {
            int exit = bench.run("stand", "show", "--stand", "serial", "--port", board.port());

            assertThat(bench.out())
                    .contains("board              avr328, firmware 1.0.0")
                    .contains("emergency stop     closed (ready)")
                    .contains("supply amps        0.0");
            assertThat(exit).isEqualTo(ExitCode.PASS);
            assertThat(board.history()).noneMatch(pins -> pins.contactorClosed() || pins.duty() > 0);
        }
    }

    @Test
    void showTellsWhichCalibrationsAreInDate(@TempDir Path folder) {
        String flow = "    least_gpm: 0.2\n    certificate: \"none: simulated\"\n";
        Path stand = new EditedFile(EditedFile.fixture("stands/simulated.yaml"), folder)
                .with(flow, flow + "    calibrated: 2025-02-28\n    due: 2026-03-01\n");

        int exit = bench.run("stand", "show", "--stand", stand.toString());

        assertThat(bench.out())
                .contains("meter 0            one K           PAST DUE since 2026-03-01 (certificate none: simulated)")
                .contains("supply amps        straight line   not calibrated (none: simulated)")
                .contains(
                        "! calibration due: meter 0, last day was 2026-03-01; runs on this stand are INVALID until it is"
                                + " calibrated");
        assertThat(exit).isEqualTo(ExitCode.PASS);
    }

    @Test
    void checkFindsAStandNotFitWhoseFlowMeterIsPastDue(@TempDir Path folder) {
        String flow = "    least_gpm: 0.2\n    certificate: \"none: simulated\"\n";
        Path stand = new EditedFile(EditedFile.fixture("stands/simulated.yaml"), folder)
                .with(flow, flow + "    calibrated: 2025-02-28\n    due: 2026-03-01\n");

        int exit = bench.run("stand", "check", "--stand", stand.toString());

        assertThat(bench.out()).contains("NOT  meter calibration").contains("calibrate the flow meter");
        assertThat(exit).isEqualTo(ExitCode.STAND);
    }

    @Test
    void checkFindsAGoodStandFitAndDrivesNothing() {
        try (EmulatedBoard board = EmulatedBoard.start(
                TestStands.healthyPump(), TestStands.described("serial").channels(), 1)) {
            int exit = bench.run("stand", "check", "--stand", "serial", "--port", board.port());

            assertThat(bench.out())
                    .contains("ok   supply at rest")
                    .contains("Fit to test with.")
                    .contains("the board says that it is safe");
            assertThat(exit).isEqualTo(ExitCode.PASS);
            assertThat(board.history()).anyMatch(EmulatedBoard.Pins::contactorClosed);
            assertThat(board.history()).noneMatch(pins -> pins.duty() > 0);
        }
    }

    @Test
    void checkFindsAWeakSupplyNotFitAndNamesTheRemedy() {
        try (EmulatedBoard board = EmulatedBoard.start(
                TestStands.pump(
                        org.pumpwright.host.plant.PumpFault.LOW_SUPPLY, org.pumpwright.host.plant.Severity.MODERATE),
                TestStands.described("serial").channels(),
                1)) {
            int exit = bench.run("stand", "check", "--stand", "serial", "--port", board.port());

            assertThat(bench.out()).contains("NOT  supply at rest").contains("set the supply to 13.8 V");
            assertThat(exit).isEqualTo(ExitCode.STAND);
        }
    }

    @Test
    void checkIsNotFitWhenTheEmergencyStopIsPressedMeanwhile() throws Exception {
        try (EmulatedBoard board = EmulatedBoard.start(
                TestStands.healthyPump(), TestStands.described("serial").channels(), 1)) {
            Thread hand = new Thread(() -> {
                while (board.history().stream()
                                .filter(EmulatedBoard.Pins::contactorClosed)
                                .count()
                        < EXCHANGES_PAST_THE_PROOF) {
                    java.util.concurrent.locks.LockSupport.parkNanos(10_000_000);
                }
                board.setInputs(false, true);
            });
            hand.start();

            int exit = bench.run("stand", "check", "--stand", "serial", "--port", board.port());

            hand.join();
            assertThat(bench.out())
                    .contains("NOT  the emergency stop was pressed")
                    .contains("NOT FIT");
            assertThat(exit).isEqualTo(ExitCode.STAND);
        }
    }

    @Test
    void checkTellsOfAPressedEmergencyStop() {
        try (EmulatedBoard board = EmulatedBoard.start(
                TestStands.healthyPump(), TestStands.described("serial").channels(), 1)) {
            board.setInputs(false, true);

            int exit = bench.run("stand", "check", "--stand", "serial", "--port", board.port());

            assertThat(bench.err()).contains("the emergency stop is pressed or its loop is open");
            assertThat(exit).isEqualTo(ExitCode.STAND);
        }
    }
}
