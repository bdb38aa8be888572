package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.plant.PumpFault;

final class PracticeCommandTest {
    private final CommandLineBench bench = new CommandLineBench();

    @TempDir
    private Path folder;

    @Test
    void aChosenFaultIsTestedAndEveryPaperSaysPractice() throws Exception {
        int exit = bench.run(
                "practice",
                "--fault",
                "dead-chamber",
                "--severity",
                "severe",
                "--seed",
                "3",
                "--records",
                folder.toString());

        assertThat(exit).isEqualTo(ExitCode.FAIL);
        assertThat(bench.out()).contains("PRACTICE").contains("The unit       severe: ");
        Path own = folder.resolve(CommandLineBench.onlyRecord(folder).id());
        assertThat(Files.readString(own.resolve("page.html"))).contains("PRACTICE");
        assertThat(Files.readString(own.resolve("page.txt"))).contains("PRACTICE");
        assertThat(CommandLineBench.onlyRecord(folder).subject().practice()).isTrue();
    }

    @Test
    void aSurpriseIsToldAfterwardsAndIsTheSameForTheSameSeed() {
        bench.run("practice", "--seed", "5", "--records", folder.resolve("a").toString());
        CommandLineBench again = new CommandLineBench();
        again.run("practice", "--seed", "5", "--records", folder.resolve("b").toString());

        assertThat(lastLine(bench)).startsWith("The unit ").isEqualTo(lastLine(again));
    }

    private static String lastLine(CommandLineBench bench) {
        String[] lines = bench.out().split("\\R");
        return lines[lines.length - 1];
    }

    @Test
    void theListNamesEveryFault() {
        assertThat(bench.run("practice", "--list")).isEqualTo(ExitCode.PASS);
        assertThat(bench.out().lines()).hasSize(PumpFault.values().length);
    }
}
