package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.bench.Firmware;

/**
 * The same records give the same new records, byte for byte but for the id, on machines set to any language, numerals and
 * time zone, with any number of runs judged at once, in any order, by any of the virtual machine's compilers.
 */
final class SameGradeAnywhereTest {
    private static final long PATIENCE_SECONDS = 120;

    @TempDir
    private static Path shared;

    private static Path records;
    private static Map<String, String> plain;

    @TempDir
    private Path folder;

    @BeforeAll
    static void gradeOnAPlainMachine() throws Exception {
        records = shared.resolve("records");
        Runs.practice(records, 1, "S1", "healthy", "moderate");
        Runs.practice(records, 2, "S2", "slip", "severe");
        Runs.practice(records, 3, "S3", "weak-magnets", "moderate");
        Runs.practice(records, 4, "S4", "suction-air", "severe");
        Runs.practice(records, 5, "S5", "drag", "mild");
        plain = grade(
                shared.resolve("plain"), List.of("-Duser.language=en", "-Duser.timezone=UTC"), "1", List.of(records));
    }

    @ParameterizedTest
    @CsvSource({
        "de, DE, '', Europe/Berlin, 2",
        "ar, EG, nu-arab, Africa/Cairo, 2",
        "hi, IN, nu-deva, Asia/Kolkata, 3",
        "tr, TR, '', Europe/Istanbul, 8"
    })
    void anyLanguageNumeralsAndTimeZoneGiveTheSame(
            String language, String country, String extension, String zone, String jobs) throws Exception {
        List<String> machine = new ArrayList<>(
                List.of("-Duser.language=" + language, "-Duser.country=" + country, "-Duser.timezone=" + zone));
        if (!extension.isEmpty()) {
            machine.add("-Duser.extensions=u-" + extension);
        }
        Map<String, String> here = grade(folder.resolve("out"), machine, jobs, List.of(records));
        assertThat(here).isEqualTo(plain);
    }

    @Test
    void anyOrderAndCompilerGiveTheSame() throws Exception {
        List<Path> backwards = new ArrayList<>(files(records, "record.json"));
        Collections.reverse(backwards);
        Map<String, String> here = grade(
                folder.resolve("out"),
                List.of("-Duser.language=en", "-XX:-TieredCompilation", "-XX:ActiveProcessorCount=4"),
                "4",
                backwards);
        assertThat(here).isEqualTo(plain);
    }

    /** Every file of the new records by its run and name, without the line that holds the id and the seal over it. */
    private static Map<String, String> grade(Path out, List<String> machine, String jobs, List<Path> what)
            throws Exception {
        List<String> words = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        words.addAll(machine);
        words.addAll(List.of(
                "-cp",
                System.getProperty("java.class.path"),
                "-Dpumpwright.home=" + Firmware.root(),
                Main.class.getName(),
                "grade",
                "--jobs",
                jobs,
                "--records",
                out.toString()));
        what.forEach(path -> words.add(path.toString()));
        Path said = out.resolveSibling(out.getFileName() + ".txt");
        ProcessBuilder starting =
                new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(said.toFile());
        starting.environment().put("PUMPWRIGHT_KEYS", out.resolveSibling("keys").toString());
        Process program = starting.start();
        assertThat(program.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
        assertThat(program.exitValue()).as(Files.readString(said)).isZero();
        Map<String, String> found = new TreeMap<>();
        for (String name : List.of("record.json", "page.txt", "page.html")) {
            for (Path file : files(out, name)) {
                String id = file.getParent().getFileName().toString();
                String run = id.substring(0, id.indexOf("-again-"));
                found.put(
                        run + "/" + name,
                        Files.readString(file).replace(id, run).replaceAll("\"sha256_of.*", ""));
            }
        }
        assertThat(found).hasSize(3 * 5);
        return found;
    }

    private static List<Path> files(Path where, String name) throws IOException {
        try (Stream<Path> all = Files.walk(where)) {
            return all.filter(file -> file.endsWith(name)).sorted().toList();
        }
    }
}
