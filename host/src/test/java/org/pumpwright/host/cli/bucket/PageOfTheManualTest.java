package org.pumpwright.host.cli.bucket;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.cli.CommandLineBench;
import org.pumpwright.host.cli.ExitCode;

/** Runs the very commands that the manual's pages of bucket test and demand show. */
final class PageOfTheManualTest {
    private static final Pattern IN_A_TABLE =
            Pattern.compile("`(pumpwright bucket (?:field|catch|ounces|diverter) [^`]+)`");

    @TempDir
    private Path folder;

    /** Each command has a folder of its own: in tests the clock stands still. */
    private int asked;

    @Test
    void everyCommandOfThePagesDoesWhatThePageSays() throws IOException {
        List<String> commands = new ArrayList<>();
        for (String page : List.of("bucket.md", "demand.md")) {
            commands.addAll(commands(
                    Files.readString(Firmware.root().resolve("docs/user").resolve(page))));
        }
        assertThat(commands).hasSizeGreaterThanOrEqualTo(7);
        for (String command : commands) {
            CommandLineBench bench = new CommandLineBench();
            int code = bench.run(arguments(command));
            assertThat(code).as(command + "\n" + bench.out() + bench.err()).isIn(ExitCode.PASS, ExitCode.FAIL);
            assertThat(bench.err()).as(command).isEmpty();
        }
    }

    @Test
    void theKOfThePageIsTheOneThatIsPrinted() throws IOException {
        String page = Files.readString(Firmware.root().resolve("docs/user/bucket.md"));
        CommandLineBench bench = new CommandLineBench();
        assertThat(bench.run(arguments("pumpwright bucket --typed fixtures/buckets/weighed-example.yaml")))
                .isEqualTo(ExitCode.PASS);
        String printed = bench.out()
                .lines()
                .filter(line -> line.startsWith("K   "))
                .findFirst()
                .orElseThrow();
        assertThat(page).contains(printed);
    }

    @Test
    void theHelpAloneLeadsToTheSameK() {
        CommandLineBench bench = new CommandLineBench();
        bench.run("bucket", "--help");
        Matcher shown =
                Pattern.compile("pumpwright bucket --typed (fixtures/\\S+)").matcher(bench.out());
        assertThat(shown.find()).isTrue();
        CommandLineBench again = new CommandLineBench();
        assertThat(again.run(arguments("pumpwright bucket --typed " + shown.group(1))))
                .isEqualTo(ExitCode.PASS);
        assertThat(again.out()).contains("3010.5 pulses per US gallon");
    }

    private static List<String> commands(String page) {
        List<String> commands = new ArrayList<>();
        boolean code = false;
        for (String line : page.split("\n", -1)) {
            if (line.startsWith("```")) {
                code = !code;
            } else if (code && line.startsWith("pumpwright ")) {
                commands.add(line);
            }
        }
        Matcher inATable = IN_A_TABLE.matcher(page);
        while (inATable.find()) {
            commands.add(inATable.group(1));
        }
        return commands;
    }

    private String[] arguments(String command) {
        List<String> words = new ArrayList<>();
        for (String word : command.split(" ", -1)) {
            words.add(
                    word.startsWith("fixtures/") ? Firmware.root().resolve(word).toString() : word);
        }
        if (words.contains("--typed") || words.contains("--stand")) {
            words.add("--records");
            words.add(folder.resolve(Integer.toString(++asked)).toString());
        }
        return words.subList(1, words.size()).toArray(String[]::new);
    }
}
