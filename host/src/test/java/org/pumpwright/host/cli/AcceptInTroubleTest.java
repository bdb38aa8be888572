package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.EmulatedBoard.Pins;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.trace.Ending;

/** A board that dies under the host, and a host that dies over the board: in real time, on the real firmware. */
@Timeout(120)
final class AcceptInTroubleTest {
    private static final Duration AT_ONCE = Duration.ofSeconds(2);
    private static final long ONE_SECOND_MICROS = 1_000_000;

    @TempDir
    private Path folder;

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

    private String[] accept() {
        return new String[] {
            "accept",
            "--stand",
            "serial",
            "--port",
            board.port(),
            "--model",
            "demo-pump",
            "--records",
            folder.resolve("records").toString()
        };
    }

    @Test
    void aBoardThatDiesEndsTheRunInvalidWithItsDataKept() throws Exception {
        CommandLineBench bench = new CommandLineBench();
        CompletableFuture<Integer> exit = CompletableFuture.supplyAsync(() -> bench.run(accept()));
        waitUntilDriven();

        board.kill();

        assertThat(exit.get(AT_ONCE.toMillis(), TimeUnit.MILLISECONDS)).isEqualTo(ExitCode.STAND);
        RunRecord record = CommandLineBench.onlyRecord(folder.resolve("records"));
        assertThat(record.grade().verdict()).isEqualTo(Verdict.INVALID);
        assertThat(record.ending())
                .isEqualTo(new Ending(
                        Ending.Kind.STAND_LOST,
                        board.port()
                                + ": the port went away. Check the cable and the board's supply, then start again."));
        assertThat(record.trace().samples()).hasSizeGreaterThan(100);
        assertThat(bench.out()).containsPattern("press the emergency stop before you touch\\s+the unit");
    }

    @Test
    void aBoardThatHangsEndsTheRunInvalidAndSoonMakesItselfSafe() throws Exception {
        CommandLineBench bench = new CommandLineBench();
        CompletableFuture<Integer> exit = CompletableFuture.supplyAsync(() -> bench.run(accept()));
        waitUntilDriven();
        long hungAt = lastPins().micros();

        board.command("hang");

        assertThat(exit.get(AT_ONCE.toMillis(), TimeUnit.MILLISECONDS)).isEqualTo(ExitCode.STAND);
        RunRecord record = CommandLineBench.onlyRecord(folder.resolve("records"));
        assertThat(record.grade().verdict()).isEqualTo(Verdict.INVALID);
        assertThat(record.ending().reason()).contains("the board has started anew (watchdog)");
        assertThat(lastDriven() - hungAt).isLessThan(ONE_SECOND_MICROS);
    }

    @Test
    void anEmergencyStopEndsTheRunInvalidWithThatReason() throws Exception {
        CommandLineBench bench = new CommandLineBench();
        CompletableFuture<Integer> exit = CompletableFuture.supplyAsync(() -> bench.run(accept()));
        waitUntilDriven();

        board.setInputs(false, true);

        assertThat(exit.get(AT_ONCE.toMillis(), TimeUnit.MILLISECONDS)).isEqualTo(ExitCode.STAND);
        RunRecord record = CommandLineBench.onlyRecord(folder.resolve("records"));
        assertThat(record.ending())
                .isEqualTo(new Ending(Ending.Kind.STOPPED_BY_BOARD, "the emergency stop was pressed"));
        assertThat(record.grade().verdict()).isEqualTo(Verdict.INVALID);
        assertThat(bench.out()).contains("the board says that it is safe");
    }

    @Test
    void aHostThatIsKilledLeavesABoardThatIsSafeWithinASecondOfItsOwnClock() throws Exception {
        Process host = startHost();
        try {
            waitUntilDriven();
            long killedAt = lastPins().micros();

            host.destroyForcibly().waitFor();

            // The board's clock may be a little ahead of what was read before the kill, never behind it.
            await(() -> lastPins().micros() > killedAt + 2 * ONE_SECOND_MICROS);
            assertThat(lastDriven() - killedAt).isLessThan(ONE_SECOND_MICROS);
            assertThat(lastPins().contactorClosed()).isFalse();
        } finally {
            host.destroyForcibly();
        }
    }

    @Test
    void aHostThatIsToldToEndMakesSafeAtOnceAndKeepsItsRecord() throws Exception {
        Process host = startHost();
        waitUntilDriven();
        long toldAt = lastPins().micros();

        host.destroy();

        assertThat(host.waitFor(5, TimeUnit.SECONDS)).isTrue();
        // Well below the board's link time-out: it was told, and did not have to find out.
        assertThat(lastDriven() - toldAt).isLessThan(ONE_SECOND_MICROS / 3);
        RunRecord record = CommandLineBench.onlyRecord(folder.resolve("records"));
        assertThat(record.ending()).isEqualTo(new Ending(Ending.Kind.STOPPED_BY_PERSON, "the program was told to end"));
        assertThat(record.grade().verdict()).isEqualTo(Verdict.INVALID);
    }

    private Process startHost() throws IOException {
        List<String> command = new java.util.ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "-Dpumpwright.home=" + Firmware.root(),
                Main.class.getName()));
        command.addAll(List.of(accept()));
        ProcessBuilder starting = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("host.txt").toFile());
        starting.environment().put("PUMPWRIGHT_KEYS", folder.resolve("keys").toString());
        return starting.start();
    }

    private void waitUntilDriven() {
        await(() -> board.history().stream().filter(pins -> pins.duty() > 0).count() > 600);
    }

    private Pins lastPins() {
        List<Pins> history = board.history();
        return history.get(history.size() - 1);
    }

    private long lastDriven() {
        return board.history().stream()
                .filter(pins -> pins.duty() > 0 || pins.contactorClosed())
                .mapToLong(Pins::micros)
                .max()
                .orElse(0);
    }

    private void await(BooleanSupplier condition) {
        long until = System.nanoTime() + Duration.ofSeconds(60).toNanos();
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > until) {
                throw new AssertionError("did not come about within 60 s; the host said: " + hostSaid());
            }
            java.util.concurrent.locks.LockSupport.parkNanos(10_000_000);
        }
    }

    private String hostSaid() {
        try {
            return Files.readString(folder.resolve("host.txt"));
        } catch (IOException e) {
            return "nothing";
        }
    }
}
