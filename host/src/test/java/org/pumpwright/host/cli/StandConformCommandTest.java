package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.BoardProcess;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.stand.wire.Line;

@Timeout(120)
final class StandConformCommandTest {
    @TempDir
    private Path folder;

    private final CommandLineBench bench = new CommandLineBench();

    @Test
    void theSimulatedStandConformsAndTheResultIsKeptWithItsDigest() throws Exception {
        Path result = folder.resolve("result.txt");

        int exit = bench.run("stand", "conform", "--stand", "simulated", "--out", result.toString());

        assertThat(bench.out()).contains("CONFORMS. ").contains(" 0 broken, 0 not possible here.");
        assertThat(exit).isEqualTo(ExitCode.PASS);
        List<String> lines = Files.readAllLines(result);
        assertThat(lines)
                .contains(
                        "Conformance of a board to the wire protocol version 1, frozen 2026-11-25",
                        "date      2026-03-02 03:15 -06:00",
                        "line      simulated board")
                .anyMatch(line -> line.startsWith("Checked by (name): ____"))
                .anyMatch(line -> line.startsWith("board     simulate, firmware 1.0.0, id 0000000000000000"));
        String above = String.join("\n", lines.subList(0, lines.size() - 1)) + "\n";
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(above.getBytes(StandardCharsets.UTF_8));
        assertThat(lines.get(lines.size() - 1))
                .isEqualTo("sha256 of all lines above: " + HexFormat.of().formatHex(digest));
    }

    @Test
    void aBoardThatBreaksTheProtocolIsToldByTheNamesOfItsDefects() {
        try (BoardProcess board = BoardProcess.run(Firmware.variant("skips-sequence"))) {
            int exit = bench.run("stand", "conform", "--stand", "serial", "--port", board.port(), "--yes");

            assertThat(bench.out())
                    .contains("Caution: this closes the contactor many times and drives drive 0 at up to 10 %")
                    .contains("DOES NOT CONFORM. ")
                    .contains("  - every frame of the board counts the sequence on by one")
                    .contains("nobody is here who can do it: open the guard");
            assertThat(exit).isEqualTo(ExitCode.FAIL);
        }
    }

    @Test
    void nothingIsDoneWithoutAYes() {
        InputStream keyboard = System.in;
        System.setIn(new ByteArrayInputStream("no\n".getBytes(StandardCharsets.UTF_8)));
        try {
            int exit = bench.run("stand", "conform", "--stand", "serial", "--port", "/dev/ttyNONE7");

            assertThat(bench.out()).contains("Begin? Type yes: ").contains("Nothing was done.");
            assertThat(exit).isEqualTo(ExitCode.USAGE);
        } finally {
            System.setIn(keyboard);
        }
    }

    @Test
    void aResultIsNeverOverwritten() throws Exception {
        Path result = Files.writeString(folder.resolve("result.txt"), "an older one");

        int exit = bench.run("stand", "conform", "--stand", "simulated", "--out", result.toString());

        assertThat(bench.err())
                .contains(result + " is already there; a result is never overwritten. Give another name with --out.");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
        assertThat(result).hasContent("an older one");
    }

    @Test
    void aLineWithoutABoardIsTroubleWithTheStandAndNoVerdict() {
        CommandLineBench silent = new CommandLineBench((port, baud) -> new SilentLine());

        int exit = silent.run("stand", "conform", "--stand", "serial", "--port", "X", "--yes");

        assertThat(silent.err()).contains("no board of protocol version 1 answered within 3 s");
        assertThat(silent.out()).doesNotContain("CONFORM");
        assertThat(exit).isEqualTo(ExitCode.STAND);
    }

    /** Nobody at the other end; waiting takes no time. */
    private static final class SilentLine implements Line {
        private long nanos;

        @Override
        public String name() {
            return "X";
        }

        @Override
        public void send(byte[] bytes) {}

        @Override
        public int receive(byte[] into, Duration atMost) {
            nanos += atMost.toNanos();
            return 0;
        }

        @Override
        public long nanoTime() {
            return nanos;
        }

        @Override
        public void close() {}
    }
}
