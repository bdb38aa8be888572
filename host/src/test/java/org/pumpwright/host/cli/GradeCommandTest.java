package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Stored runs that are judged again, as a person would have it done. */
final class GradeCommandTest {
    @TempDir
    private static Path shared;

    private static Path stored;

    @TempDir
    private Path folder;

    private CommandLineBench bench = new CommandLineBench();
    private Path records = Path.of("");
    private Path out = Path.of("");

    @BeforeAll
    static void testThreeUnits() {
        stored = shared.resolve("records");
        Runs.practice(stored, 1, "S1", "healthy", "moderate");
        Runs.practice(stored, 2, "S2", "slip", "severe");
        Runs.practice(stored, 3, "S3", "low-supply", "severe");
    }

    @BeforeEach
    void copyTheRecords() {
        records = folder.resolve("records");
        out = folder.resolve("again");
        copy(stored, records);
    }

    @Test
    void everyRunGetsANewRecordAndTheOldOnesStayToTheByte() throws Exception {
        Map<String, byte[]> before = contents(records);
        assertThat(bench.run("grade", records.toString(), "--records", out.toString()))
                .as(bench.err())
                .isZero();
        Map<String, byte[]> after = contents(records);
        assertThat(after.keySet()).isEqualTo(before.keySet());
        before.forEach((name, bytes) -> assertThat(after.get(name)).as(name).isEqualTo(bytes));
        List<Path> made = recordsIn(out);
        assertThat(made).hasSize(3);
        for (Path file : made) {
            RunRecord again = RunRecordFile.read(file);
            String origin = again.regradedFrom().orElseThrow();
            RunRecord run = RunRecordFile.read(records.resolve(origin).resolve("record.json"));
            assertThat(again.id()).startsWith(origin + "-again-").isNotEqualTo(origin);
            assertThat(again.trace()).isEqualTo(run.trace());
            assertThat(again.subject()).isEqualTo(run.subject());
            assertThat(again.startedAt()).isEqualTo(run.startedAt());
            assertThat(again.grade()).isEqualTo(run.grade());
            assertThat(file.resolveSibling("page.html")).isNotEmptyFile();
            assertThat(file.resolveSibling("page.txt")).isNotEmptyFile();
        }
        assertThat(bench.out())
                .contains("3 graded again: 3 as before, 0 changed.")
                .contains("New records are in " + out + "; the old ones are as they were.");
    }

    @Test
    void aNewerCurveChangesVerdictsAndTheSummarySaysFromWhatToWhat() throws Exception {
        Path home = homeWithAWiderCurve();
        CommandLineBench later = new CommandLineBench(home, (port, baud) -> {
            throw new AssertionError("no port is opened");
        });
        assertThat(later.run("grade", records.toString(), "--records", out.toString()))
                .as(later.err())
                .isZero();
        assertThat(later.out())
                .contains("3 graded again: 2 as before, 1 changed.")
                .containsPattern("FAIL +-> PASS +1\\R")
                .contains("serial S2  FAIL -> PASS");
        assertThat(verdicts(out)).isEqualTo(Map.of("S1", Verdict.PASS, "S2", Verdict.PASS, "S3", Verdict.INVALID));
        assertThat(recordsIn(out))
                .allSatisfy(file -> assertThat(
                                RunRecordFile.read(file).curve().orElseThrow().label())
                        .isEqualTo("demo-pump v2"));
    }

    @Test
    void aDryRunWritesNothing() throws Exception {
        assertThat(bench.run("grade", records.toString(), "--records", out.toString(), "--dry-run"))
                .isZero();
        assertThat(out).doesNotExist();
        assertThat(bench.out())
                .contains("3 graded on trial: 3 as before, 0 changed.")
                .contains("Nothing was written: this was a dry run.");
    }

    @Test
    void withoutANameTheFolderOfRecordsIsGradedAndItsOwnNewRecordsAreNotGradedAgain() throws Exception {
        Path home = homeWith(records);
        CommandLineBench own = new CommandLineBench(home, (port, baud) -> {
            throw new AssertionError("no port is opened");
        });
        assertThat(own.run("grade")).as(own.err()).isZero();
        assertThat(recordsIn(home.resolve("records"))).hasSize(6);
        CommandLineBench again = new CommandLineBench(home, (port, baud) -> {
            throw new AssertionError("no port is opened");
        });
        assertThat(again.run("grade", "--dry-run")).isZero();
        assertThat(again.out())
                .contains("3 graded on trial: 3 as before, 0 changed.")
                .contains("3 passed over: already a grading of another record");
    }

    @Test
    void oneRecordShowsItsPageAndAnswersWithItsVerdict() throws Exception {
        RunRecord failed = record("S2");
        String file = records.resolve(failed.id()).resolve("record.json").toString();
        assertThat(bench.run("grade", file, "--records", out.toString()))
                .as(bench.err())
                .isEqualTo(ExitCode.FAIL);
        assertThat(bench.out())
                .contains("|   FAIL   |")
                .contains("Graded again   " + failed.id() + ": FAIL as before")
                .contains("Page to print  " + out);
    }

    @Test
    void whatIsDamagedOrForeignIsToldInALineEachAndStopsNothing() throws Exception {
        Path torn = records.resolve(record("S1").id()).resolve("record.json");
        Files.writeString(torn, Files.readString(torn).substring(0, 5000));
        Path changed = records.resolve(record("S2").id()).resolve("record.json");
        Files.writeString(changed, Files.readString(changed).replace("\"S2\"", "\"S9\""));
        foreign("foreign", "{\"format\": \"something-else/1\"}");
        foreign("newer", "{\"format\": \"pumpwright-run/99\"}");
        foreign("empty", "");
        assertThat(bench.run("grade", records.toString(), "--records", out.toString()))
                .isEqualTo(ExitCode.STAND);
        assertThat(lines("NOT GRADED")).hasSize(5);
        assertThat(lines("NOT GRADED " + torn)).singleElement().asString().contains("Take the copy from the backup");
        assertThat(lines("NOT GRADED " + changed))
                .singleElement()
                .asString()
                .contains("was changed after it was written");
        assertThat(lines("NOT GRADED " + records.resolve("foreign/record.json")))
                .singleElement()
                .asString()
                .contains("is no record of a run")
                .endsWith("Give the record of a run.");
        assertThat(lines("NOT GRADED " + records.resolve("newer/record.json")))
                .singleElement()
                .asString()
                .contains("has format pumpwright-run/99")
                .contains("or a newer one");
        assertThat(bench.out())
                .contains("1 graded again: 1 as before, 0 changed.")
                .contains("5 could not be graded; why stands above, and nothing was changed.");
        assertThat(recordsIn(out)).hasSize(1);
    }

    @Test
    void aRunWhosePlanHasAnotherVersionNowIsRefusedNamingBoth() throws Exception {
        Path home = homeWith(records);
        Path plan = home.resolve("fixtures/plans/quick-12v-pump.yaml");
        String text = Files.readString(plan);
        Files.writeString(plan, text.replaceFirst("version: \\d+", "version: 98"));
        CommandLineBench changed = new CommandLineBench(home, (port, baud) -> {
            throw new AssertionError("no port is opened");
        });
        assertThat(changed.run("grade")).isEqualTo(ExitCode.STAND);
        String was = record("S1").plan();
        assertThat(changed.out())
                .contains(": was run by plan " + was + "; the shelf has quick-12v-pump v98. Put the file of " + was)
                .contains("3 could not be graded");
        Files.writeString(home.resolve("fixtures/plans/quick-as-it-was.yaml"), text);
        CommandLineBench mended = new CommandLineBench(home, (port, baud) -> {
            throw new AssertionError("no port is opened");
        });
        assertThat(mended.run("grade")).as(mended.out()).isZero();
    }

    @Test
    void aCurveThatDoesNotBelongIsRefusedForEachRun() throws Exception {
        Path other = folder.resolve("other.yaml");
        Files.writeString(
                other,
                Files.readString(Firmware.root().resolve("fixtures/curves/demo-pump.yaml"))
                        .replace("nozzle: \"n-0.60\"", "nozzle: \"n-0.80\""));
        assertThat(bench.run("grade", records.toString(), "--curve", other.toString(), "--dry-run"))
                .isEqualTo(ExitCode.STAND);
        assertThat(bench.out())
                .contains("does not go with curve demo-pump v1: nozzle n-0.60 instead of n-0.80. Leave --curve away");
    }

    @Test
    void theSameRunInTwoPlacesIsJudgedOnce() throws Exception {
        Path copy = folder.resolve("copy");
        copy(records, copy);
        assertThat(bench.run("grade", records.toString(), copy.toString(), "--records", out.toString()))
                .as(bench.out())
                .isZero();
        assertThat(recordsIn(out)).hasSize(3);
        assertThat(bench.out()).contains("3 passed over");
    }

    @Test
    void wrongUseIsToldBeforeAnythingIsDone() {
        assertThat(bench.run("grade", folder.resolve("nothing-here").toString(), "--records", out.toString()))
                .isEqualTo(ExitCode.STAND);
        assertThat(bench.out()).contains("nothing-here: is not there. Check the name and the folder.");
        assertThat(bench.run("grade", records.toString(), "--jobs", "0")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("--jobs is 0, it must be 1 to 1000");
        assertThat(bench.run("grade", records.toString(), "--curve", "nobodys")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("there is no curve 'nobodys'. Known are: demo-pump.");
    }

    @Test
    void anEmptyFolderIsToldAsOne() throws Exception {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertThat(bench.run("grade", empty.toString())).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("there are no records in " + empty + ".");
    }

    @Test
    void otherProgramsGetALineForEachRunAndASummary() throws Exception {
        foreign("foreign", "{}");
        assertThat(bench.run("grade", records.toString(), "--records", out.toString(), "--json"))
                .isEqualTo(ExitCode.STAND);
        JsonMapper json = JsonMapper.builder().build();
        List<JsonNode> told = bench.out().lines().map(json::readTree).toList();
        assertThat(told.stream().map(node -> node.get("event").stringValue()))
                .containsExactly("begins", "graded", "graded", "graded", "not_graded", "summary");
        assertThat(told.get(1).get("verdict").stringValue()).isEqualTo("pass");
        assertThat(Path.of(told.get(1).get("record").stringValue())).exists();
        JsonNode summary = told.get(5);
        assertThat(summary.get("graded").intValue()).isEqualTo(3);
        assertThat(summary.get("changed").intValue()).isZero();
        assertThat(summary.get("not_graded").intValue()).isEqualTo(1);
    }

    private List<String> lines(String beginning) {
        return bench.out()
                .lines()
                .map(line -> line.replaceFirst("^NOT GRADED +", "NOT GRADED "))
                .filter(line -> line.startsWith(beginning))
                .toList();
    }

    private void foreign(String name, String text) throws IOException {
        Files.writeString(Files.createDirectory(records.resolve(name)).resolve("record.json"), text);
    }

    private RunRecord record(String serial) throws Exception {
        for (Path file : recordsIn(stored)) {
            RunRecord record = RunRecordFile.read(file);
            if (record.subject().serial().equals(serial)) {
                return record;
            }
        }
        throw new AssertionError("no run of " + serial);
    }

    private static Map<String, Verdict> verdicts(Path where) throws Exception {
        Map<String, Verdict> verdicts = new TreeMap<>();
        for (Path file : recordsIn(where)) {
            RunRecord record = RunRecordFile.read(file);
            verdicts.put(record.subject().serial(), record.grade().verdict());
        }
        return verdicts;
    }

    /** A second version of the curve whose limits are five times as far off. */
    private Path homeWithAWiderCurve() throws IOException {
        Path home = homeWith(records);
        Path curves = home.resolve("fixtures/curves");
        String wider = Files.readString(curves.resolve("demo-pump.yaml"))
                .replaceFirst("version: 1", "version: 2")
                .replaceFirst("tolerance_factor: [0-9.]+", "tolerance_factor: 18.5");
        Files.writeString(curves.resolve("demo-pump-2.yaml"), wider);
        return home;
    }

    private Path homeWith(Path itsRecords) {
        Path home = folder.resolve("home");
        copy(Firmware.root().resolve("fixtures"), home.resolve("fixtures"));
        copy(itsRecords, home.resolve("records"));
        return home;
    }

    private static List<Path> recordsIn(Path where) throws IOException {
        try (Stream<Path> all = Files.walk(where)) {
            return all.filter(file -> file.endsWith("record.json")).sorted().toList();
        }
    }

    private static Map<String, byte[]> contents(Path where) throws IOException {
        try (Stream<Path> all = Files.walk(where)) {
            return all.filter(Files::isRegularFile)
                    .collect(Collectors.toMap(
                            file -> where.relativize(file).toString(),
                            GradeCommandTest::bytes,
                            (a, b) -> a,
                            TreeMap::new));
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path file : all.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target, StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
