package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.grade.PointReading;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.record.RunRecord;

/**
 * The main job on the microcontroller's own program, over a pseudo-terminal and the serial library, beside the same unit on
 * the simulated stand. The board runs as fast as the machine can and waits for its host; everything is measured by the board's clock.
 */
@Timeout(120)
final class AcceptOnFirmwareTest {
    private static final long UNIT = 1;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            HEALTHY     | PASS    | 0 | 0.02 | all 6 judged features lie inside their healthy ranges
            DRAG        | FAIL    | 1 | 0.02 | motor amps at 30 %
            SLIP        | FAIL    | 1 | 0.02 | flow at 100 %
            STRAINER    | FAIL    | 1 | 0.02 | flow at 100 %
            LOW_SUPPLY  | INVALID | 3 | 0.02 | supply at rest
            SUCTION_AIR | INVALID | 3 | 0.10 | AIR SUSPECTED
            """)
    void theFirmwareAndTheSimulatedStandJudgeTheSameUnitAlike(
            PumpFault fault, Verdict verdict, int exit, double flowAgrees, String reason) {
        RunRecord onFirmware = acceptOnFirmware(fault, exit);
        RunRecord simulated = acceptSimulated(fault, exit);

        assertThat(onFirmware.grade().verdict()).isEqualTo(verdict);
        assertThat(simulated.grade().verdict()).isEqualTo(verdict);
        assertThat(onFirmware.grade().reasons().get(0)).contains(reason);
        assertThat(simulated.grade().reasons().get(0)).contains(reason);
        assertThat(failed(onFirmware)).isEqualTo(failed(simulated));
        assertThat(onFirmware.stand().board()).isEqualTo("avr328");
        assertThat(onFirmware.stand().samplesLost()).isZero();
        assertSameReadings(onFirmware, simulated, flowAgrees);
    }

    private RunRecord acceptOnFirmware(PumpFault fault, int exit) {
        Path records = folder.resolve("firmware");
        PracticeUnit unit = new PracticeUnit(fault, Severity.MODERATE, UNIT);
        try (EmulatedBoard board = EmulatedBoard.inLockstep(
                unit.plant(), TestStands.described("serial").channels())) {
            CommandLineBench bench = new CommandLineBench(board::line);
            int code = bench.run(
                    "accept",
                    "--stand",
                    "serial",
                    "--port",
                    board.port(),
                    "--model",
                    "demo-pump",
                    "--records",
                    records.toString());
            assertThat(code).as(bench.out() + bench.err()).isEqualTo(exit);
        }
        return CommandLineBench.onlyRecord(records);
    }

    private RunRecord acceptSimulated(PumpFault fault, int exit) {
        Path records = folder.resolve("simulated");
        CommandLineBench bench = new CommandLineBench();
        int code = bench.run(
                "accept",
                "--stand",
                "simulated",
                "--model",
                "demo-pump",
                "--fault",
                fault.word(),
                "--seed",
                "" + UNIT,
                "--records",
                records.toString());
        assertThat(code).as(bench.out() + bench.err()).isEqualTo(exit);
        return CommandLineBench.onlyRecord(records);
    }

    private static List<String> failed(RunRecord record) {
        return record.grade().features().stream()
                .filter(feature -> feature.judged() && feature.failed())
                .map(feature -> feature.feature().words() + " " + feature.decision())
                .toList();
    }

    /** Flow comes from time stamps, and slugs of air come when they come; amps from two ten-bit converters, whose step is 0.04 A. */
    private static void assertSameReadings(RunRecord one, RunRecord other, double flowAgrees) {
        List<PointReading> a = PointReading.all(one.trace());
        List<PointReading> b = PointReading.all(other.trace());
        assertThat(a).hasSameSizeAs(b);
        for (int i = 0; i < a.size(); i++) {
            double flow = b.get(i).flow().value();
            assertThat(a.get(i).flow().value()).isCloseTo(flow, within(flowAgrees * flow + 1e-7));
            assertThat(a.get(i).supplyAmps().value())
                    .isCloseTo(
                            b.get(i).supplyAmps().value(),
                            within(0.08 + 0.01 * b.get(i).supplyAmps().value()));
        }
    }
}
