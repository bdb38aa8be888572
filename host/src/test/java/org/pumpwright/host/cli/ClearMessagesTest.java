package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.BoardProcess;
import org.pumpwright.host.bench.Firmware;

/** What a person reads when something is wrong before a run: word for word. */
@Timeout(60)
final class ClearMessagesTest {
    private static final String ASK = """
            steps:
              - ask:
                  name: look
                  question: Is the weep hole dry?
                  answers:
                    - { word: dry }
                    - { word: leaks, ends: unit, because: the weep hole leaks }
            """;

    @TempDir
    private Path folder;

    private final CommandLineBench bench = new CommandLineBench();

    private int acceptAt(String port) {
        return bench.run(
                "accept", "--stand", "serial", "--port", port, "--model", "demo-pump", "--records", folder.toString());
    }

    private int acceptSimulated(String... more) {
        List<String> arguments =
                new ArrayList<>(List.of("accept", "--stand", "simulated", "--records", folder.toString()));
        arguments.addAll(List.of(more));
        return bench.run(arguments.toArray(String[]::new));
    }

    @Test
    void aWrongPlanFileIsToldWithFileAndLine() throws IOException {
        Path plan = folder.resolve("mine.yaml");
        String good = Files.readString(Firmware.root().resolve("fixtures/plans/quick-12v-pump.yaml"));
        Files.writeString(plan, good.replaceFirst("least_seconds: 1\\b", "least_seconds: -2"));

        int exit = acceptSimulated("--model", "demo-pump", "--plan", plan.toString());

        assertThat(bench.err())
                .isEqualToNormalizingNewlines("pumpwright: " + plan
                        + ":%d: steps[0].sweep.settle.least_seconds is -2, allowed is 0.1 to 60 (s)\n"
                                .formatted(lineOf(plan, "-2")));
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    private static int lineOf(Path file, String text) throws IOException {
        List<String> lines = Files.readAllLines(file);
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).contains(text)) {
                return i + 1;
            }
        }
        throw new AssertionError(text + " is not in " + file);
    }

    @Test
    void aPlanFileThatIsNotThereIsTold() {
        int exit = acceptSimulated("--model", "demo-pump", "--plan", "/nowhere/plan.yaml");

        assertThat(bench.err())
                .isEqualToNormalizingNewlines(
                        "pumpwright: /nowhere/plan.yaml: the file is not there: check the name and the folder\n");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void anUnknownModelIsToldWithTheKnownOnes() {
        int exit = acceptSimulated("--model", "demo-pmp");

        assertThat(bench.err())
                .isEqualToNormalizingNewlines(
                        "pumpwright: there is no model 'demo-pmp'. Known are: demo-driver, demo-harness,"
                                + " demo-hydraulic-pump, demo-meter, demo-pump. A new one is a file in "
                                + Firmware.root().resolve("fixtures/models") + ".\n");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void anUnknownFaultIsToldWithTheKnownOnes() {
        int exit = acceptSimulated("--model", "demo-pump", "--fault", "rust");

        assertThat(bench.err())
                .startsWith("pumpwright: there is no fault 'rust' of a 12 V diaphragm pump. Known are: healthy, ");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void anAnswerToNoQuestionOfThePlanIsTold() {
        int exit = acceptSimulated("--model", "demo-pump", "--answer", "outlet=done");

        assertThat(bench.err())
                .isEqualToNormalizingNewlines(
                        "pumpwright: plan 'quick-12v-pump' asks nothing by the name 'outlet'. It has no"
                                + " questions.\n");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void aWordThatIsNoAnswerIsTold() throws IOException {
        String good = Files.readString(Firmware.root().resolve("fixtures/plans/quick-12v-pump.yaml"));
        Path plan = folder.resolve("mine.yaml");
        Files.writeString(plan, good.replaceFirst("steps:\n", ASK));

        int exit = acceptSimulated("--model", "demo-pump", "--plan", plan.toString(), "--answer", "look=maybe");

        assertThat(bench.err())
                .isEqualToNormalizingNewlines(
                        "pumpwright: 'maybe' is no answer to 'look' of plan 'quick-12v-pump'. Known"
                                + " are: dry, leaks.\n");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void aMissingOptionIsToldWithTheWayToHelp() {
        int exit = acceptSimulated();

        assertThat(bench.err())
                .isEqualToNormalizingNewlines(
                        "pumpwright: Missing required option: '--model=NAME'\nHelp: pumpwright accept --help\n");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void aMissingPortIsTold() {
        int exit = acceptAt("/dev/ttyNONE7");

        assertThat(bench.err())
                .isEqualToNormalizingNewlines("pumpwright: there is no port /dev/ttyNONE7. Is the board plugged in?"
                        + " 'pumpwright stand find' lists the ports and the boards that answer.\n");
        assertThat(exit).isEqualTo(ExitCode.STAND);
    }

    @Test
    void aFileInThePlaceOfAPortIsTold() throws IOException {
        Path file = Files.writeString(folder.resolve("ttyUSB0"), "");

        int exit = acceptAt(file.toString());

        assertThat(bench.err())
                .isEqualToNormalizingNewlines("pumpwright: " + file
                        + " is a file, not a serial port. 'pumpwright stand find' lists the ports.\n");
        assertThat(exit).isEqualTo(ExitCode.STAND);
    }

    @Test
    void aPortThatAnotherProgramHasIsTold() throws Exception {
        try (BoardProcess board = BoardProcess.pc()) {
            Process other = start(
                    List.of(),
                    "accept",
                    "--stand",
                    "serial",
                    "--port",
                    board.port(),
                    "--model",
                    "demo-pump",
                    "--records",
                    folder.toString());
            try {
                assertThat(other.inputReader().lines().anyMatch(line -> line.startsWith("Armed.")))
                        .isTrue();

                int exit = acceptAt(board.port());

                assertThat(bench.err())
                        .isEqualToNormalizingNewlines("pumpwright: " + board.port()
                                + " is in use by another program. Close that program (a second Pumpwright, a terminal, a"
                                + " firmware loader) and try again.\n");
                assertThat(exit).isEqualTo(ExitCode.STAND);
            } finally {
                other.destroyForcibly().waitFor();
            }
        }
    }

    @Test
    void aPortWithoutRightsIsToldWithTheLineThatGivesThem() throws Exception {
        try (BoardProcess board = BoardProcess.pc()) {
            Path port = Path.of(board.port());
            Files.setPosixFilePermissions(port, PosixFilePermissions.fromString("---------"));
            String group = Files.getAttribute(port, "posix:group").toString();

            // Root may open everything; without this capability it is held to the rights like everybody.
            List<String> likeEverybody =
                    isRoot() ? List.of("setpriv", "--bounding-set=-dac_override,-dac_read_search") : List.of();
            Process host = start(likeEverybody, "stand", "show", "--stand", "serial", "--port", board.port());

            assertThat(new String(host.getErrorStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8))
                    .isEqualToNormalizingNewlines("pumpwright: " + port
                            + ": this user may not open the port. Add the user to the port's group and log in again: sudo"
                            + " usermod -aG " + group + " " + System.getProperty("user.name") + "\n");
            assertThat(host.waitFor()).isEqualTo(ExitCode.STAND);
        }
    }

    @Test
    void aBoardOfAnotherProtocolVersionIsTold() {
        try (BoardProcess board = BoardProcess.pc("--version-byte", "2")) {
            int exit = acceptAt(board.port());

            assertThat(bench.err())
                    .isEqualToNormalizingNewlines("pumpwright: " + board.port()
                            + ": the board (firmware 1.0) speaks protocol version 2, this program speaks version 1. Load the"
                            + " firmware that came with this program, or use the program that belongs to the board.\n");
            assertThat(exit).isEqualTo(ExitCode.STAND);
        }
    }

    @Test
    void aPortForASimulatedStandIsRefused() {
        int exit = bench.run("stand", "show", "--stand", "simulated", "--port", "/dev/ttyUSB0");

        assertThat(bench.err())
                .isEqualToNormalizingNewlines("pumpwright: stand 'simulated' is simulated and has no port. Leave --port"
                        + " away, or choose a stand on a serial port.\n");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void aFaultForARealStandIsRefused() {
        int exit = bench.run(
                "accept", "--stand", "serial", "--port", "/dev/ttyUSB0", "--model", "demo-pump", "--fault", "drag");

        assertThat(bench.err())
                .isEqualToNormalizingNewlines(
                        "pumpwright: stand 'serial' is a real one: --fault, --severity, --seed and"
                                + " --pace are for simulated units. Leave them away.\n");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void aPaceBelowZeroIsRefused() {
        int exit = acceptSimulated("--model", "demo-pump", "--pace", "-1");

        assertThat(bench.err()).contains("--pace is -1.0, it must be above 0; leave it away for as fast as it goes");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void aRunThatItsFolderDoesNotTakeIsKeptElsewhereAndThatIsTold() throws IOException {
        // A file stands where the run's own folder would be: the write fails after the run, as on a full disk.
        Files.writeString(folder.resolve("20260302T091500.000Z"), "");

        int exit = acceptSimulated("--model", "demo-pump");

        assertThat(exit).isEqualTo(ExitCode.PASS);
        assertThat(bench.out())
                .contains("CAUTION        " + folder.resolve("20260302T091500.000Z"))
                .contains("The run is kept in " + bench.spare.resolve("20260302T091500.000Z") + " instead: move it to "
                        + folder + " when that works again.");
        assertThat(CommandLineBench.onlyRecord(bench.spare).trace().samples()).hasSizeGreaterThan(1000);
    }

    @Test
    void aFolderThatTakesNoRecordsIsToldBeforeAnythingMoves() throws IOException {
        Path file = Files.writeString(folder.resolve("full"), "");

        int exit = bench.run(
                "accept",
                "--stand",
                "simulated",
                "--model",
                "demo-pump",
                "--records",
                file.resolve("records").toString());

        assertThat(bench.err())
                .startsWith("pumpwright: records can't be kept in " + file.resolve("records"))
                .contains("Choose another folder: --records PATH");
        assertThat(bench.out()).doesNotContain("Armed.");
        assertThat(exit).isEqualTo(ExitCode.USAGE);
    }

    private static boolean isRoot() {
        return System.getProperty("user.name").equals("root");
    }

    private static Process start(List<String> before, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "-Dpumpwright.home=" + Firmware.root()));
        command.add("-Dpumpwright.piped=true");
        command.add(Main.class.getName());
        command.addAll(List.of(arguments));
        ProcessBuilder starting = new ProcessBuilder(command);
        starting.environment().putAll(CommandLineBench.environment(Firmware.root()));
        return starting.start();
    }
}
