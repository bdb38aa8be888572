package org.pumpwright.host.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.rule.Source;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

class RunRecordFileTest {
    @TempDir
    private Path folder;

    private static final RunRecord FAIL = SampleRecords.fail();

    private Path written(RunRecord run) throws RunRecordException {
        Path file = folder.resolve("run.json");
        RunRecordFile.write(run, file);
        return file;
    }

    private Path rewritten(String what, String by) throws Exception {
        Path file = written(FAIL);
        String json = Files.readString(file);
        assertThat(json).contains(what);
        Files.writeString(file, json.replace(what, by));
        return file;
    }

    /** Rewrites and puts a right digest under it, as a faulty writer would. */
    private Path resealed(String what, String by) throws Exception {
        Path file = rewritten(what, by);
        String json = Files.readString(file);
        Files.write(file, SealedText.seal(json.substring(0, json.length() - 1)));
        return file;
    }

    @Property(seed = "20260402", tries = 300)
    void anyRecordReadsBackEqual(@ForAll long seed) throws Exception {
        RunRecord run = DrawnRecords.draw(seed);
        Path dir = Files.createTempDirectory("pumpwright-record");
        Path file = dir.resolve("run.json");
        try {
            RunRecordFile.write(run, file);
            assertThat(RunRecordFile.read(file)).isEqualTo(run);
        } finally {
            Files.deleteIfExists(file);
            Files.delete(dir);
        }
    }

    @Property(seed = "20260402", tries = 300)
    void noChangedByteGoesUnseen(
            @ForAll @IntRange(max = 1_000_000) int place, @ForAll @IntRange(min = 1, max = 255) int flip)
            throws Exception {
        Path dir = Files.createTempDirectory("pumpwright-record");
        Path file = dir.resolve("run.json");
        try {
            RunRecordFile.write(FAIL, file);
            byte[] bytes = Files.readAllBytes(file);
            bytes[place % bytes.length] ^= (byte) flip;
            Files.write(file, bytes);
            assertThatThrownBy(() -> RunRecordFile.read(file)).isInstanceOf(RunRecordException.class);
        } finally {
            Files.deleteIfExists(file);
            Files.delete(dir);
        }
    }

    @Property(seed = "20260402", tries = 100)
    void aFileThatEndsEarlyIsRefused(@ForAll @IntRange(min = 1, max = 60_000) int missing) throws Exception {
        Path dir = Files.createTempDirectory("pumpwright-record");
        Path file = dir.resolve("run.json");
        try {
            RunRecordFile.write(FAIL, file);
            byte[] bytes = Files.readAllBytes(file);
            Files.write(file, Arrays.copyOf(bytes, Math.max(0, bytes.length - missing)));
            assertThatThrownBy(() -> RunRecordFile.read(file)).isInstanceOf(RunRecordException.class);
        } finally {
            Files.deleteIfExists(file);
            Files.delete(dir);
        }
    }

    @Test
    void aRunOf4000SamplesStaysBelowAMegabyte() throws Exception {
        Trace trace = FAIL.trace();
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i < 4000; i++) {
            int code = 20_000 + i;
            Sample.AnalogReading reading = new Sample.AnalogReading(code, code - 99, code + 99);
            Sample.MeterCount count = new Sample.MeterCount(1_000_000 + 17L * i, 5_000_000_000_000L + 50_000_000L * i);
            samples.add(new Sample(
                    5_000_000_000_000L + 50_000_000L * i,
                    List.of(count, count),
                    List.of(reading, reading, reading, reading),
                    List.of(Duty.ofPercent(33)),
                    true,
                    true,
                    true));
        }
        RunRecord run = with(FAIL, new Trace(trace.channels(), samples, trace.points()));
        Path file = written(run);
        assertThat(Files.size(file)).isLessThan(1_000_000);
        assertThat(RunRecordFile.read(file)).isEqualTo(run);
    }

    @Test
    void theFileCanBeReadByAPerson() throws Exception {
        String json = Files.readString(written(FAIL));
        assertThat(json)
                .startsWith("{\n  \"format\": \"pumpwright-run/2\",\n  \"id\": \"20260402-081530-7f3a\",\n")
                .contains("\"started_at\": \"2026-04-02T08:15:30-05:00\"")
                .contains("\"verdict\": \"fail\"", "\"decision\": \"near-low\"", "\"quantity\": \"motor-amps\"")
                .contains("\"unit\": \"m3_per_second\"", "\"leg\": \"up\"", "\"pwm_hz\": 7812.0")
                .contains("\"armed\": [1,1,1,")
                .contains("\"degrees_of_freedom\": \"Infinity\"")
                .contains("\"boot_id\": 3735928559");
    }

    @Test
    void integersBeyond2ToThe53AreStrings() throws Exception {
        assertThat(RecordLayout.integer(9_007_199_254_740_992L)).hasToString("9007199254740992");
        assertThat(RecordLayout.integer(9_007_199_254_740_993L)).hasToString("\"9007199254740993\"");
        assertThat(RecordLayout.integer(Long.MIN_VALUE)).hasToString("\"-9223372036854775808\"");
    }

    @Test
    void aRecordIsNeverOverwritten() throws Exception {
        Path file = written(FAIL);
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> RunRecordFile.write(SampleRecords.pass(), file))
                .isInstanceOf(RunRecordException.class)
                .hasMessage(file + ": is already there. Nothing was written: a record is never overwritten.");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void missingFoldersAreMadeAndNothingButTheRecordIsLeft() throws Exception {
        Path file = folder.resolve("2026/04/run.json");
        RunRecordFile.write(FAIL, file);
        try (Stream<Path> entries = Files.list(file.getParent())) {
            assertThat(entries).containsExactly(file);
        }
    }

    @Test
    void aFolderThatIsAFileIsNamed() throws Exception {
        Path blocked = Files.createFile(folder.resolve("records"));
        Path file = blocked.resolve("run.json");
        assertThatThrownBy(() -> RunRecordFile.write(FAIL, file))
                .isInstanceOf(RunRecordException.class)
                .hasMessage(file + ": cannot be written: " + blocked + " is not a folder."
                        + " Nothing was written; choose another folder.");
    }

    @Test
    void aNameThatTheDiskRefusesLeavesNothingBehind() throws Exception {
        Path file = folder.resolve("x".repeat(300) + ".json");
        assertThatThrownBy(() -> RunRecordFile.write(FAIL, file))
                .isInstanceOf(RunRecordException.class)
                .hasMessageStartingWith(file + ": cannot be written: ")
                .hasMessageEndingWith(
                        "Nothing was written; check that the disk is there, not full and not write-protected.");
        assertEmpty(folder);
    }

    @Test
    void samplesOfDifferentShapeAreRefusedBeforeAnythingIsWritten() throws IOException {
        Trace trace = FAIL.trace();
        List<Sample> samples = new ArrayList<>(trace.samples());
        Sample first = samples.get(0);
        samples.set(2, new Sample(first.boardNanos(), first.meters(), List.of(), first.applied(), true, true, true));
        RunRecord run = with(FAIL, new Trace(trace.channels(), samples, trace.points()));
        Path file = folder.resolve("run.json");
        assertThatThrownBy(() -> RunRecordFile.write(run, file))
                .hasMessage(file + ": cannot be written: sample 3 has 0 analogue readings, the first has 2."
                        + " Nothing was written; please report this.");
        assertEmpty(folder);
    }

    @Test
    void aFileThatIsNotThereIsNamed() {
        Path file = folder.resolve("none.json");
        assertThatThrownBy(() -> RunRecordFile.read(file))
                .hasMessage(file + ": is not there. Check the name and the folder.");
    }

    @Test
    void anotherVersionOfTheFormatIsRefusedWithBothVersions() throws Exception {
        Path file = rewritten("pumpwright-run/2", "pumpwright-run/3");
        assertThatThrownBy(() -> RunRecordFile.read(file))
                .hasMessage(file + ": has format pumpwright-run/3, this program reads pumpwright-run/2 and"
                        + " pumpwright-run/1."
                        + " Open it with the version of Pumpwright that wrote it, or a newer one.");
    }

    @Test
    void anotherKindOfJsonIsRefused() throws Exception {
        Path file = Files.writeString(folder.resolve("other.json"), "{\"name\": 1}");
        assertThatThrownBy(() -> RunRecordFile.read(file))
                .hasMessage(file + ": is no record of a run (it has no \"format\": \"pumpwright-run/2\")."
                        + " Give the record of a run.");
    }

    @Test
    void halfAFileIsRefusedWithTheLineWhereItEnds() throws Exception {
        Path file = Files.writeString(folder.resolve("half.json"), "{\n  \"format\": \"pumpwright-run/1\",\n  \"id\"");
        assertThatThrownBy(() -> RunRecordFile.read(file))
                .hasMessageStartingWith(file + ": is not whole, or is no record at all (line 3: ")
                .hasMessageEndingWith("Take the copy from the backup; do not mend the file by hand.");
    }

    @Test
    void anEditedFigureIsSeen() throws Exception {
        Path file = rewritten("\"serial\": \"D-10442\"", "\"serial\": \"D-10443\"");
        assertThatThrownBy(() -> RunRecordFile.read(file))
                .hasMessage(file + ": was changed after it was written (its SHA-256 does not match)."
                        + " Take the copy from the backup; do not mend the file by hand.");
    }

    @Test
    void whatIsWrongInASealedFileIsNamedByItsPlace() throws Exception {
        assertThatThrownBy(() -> RunRecordFile.read(resealed("\"verdict\": \"fail\"", "\"verdict\": \"maybe\"")))
                .hasMessageContaining(": grade.verdict is \"maybe\", which is not known here. ");
    }

    @Test
    void aMissingEntryIsNamedByItsPlace() throws Exception {
        assertThatThrownBy(() -> RunRecordFile.read(resealed("\"technician\"", "\"technican\"")))
                .hasMessageContaining(": subject.technician is missing. ");
    }

    @Test
    void aValueOutOfRangeIsRefused() throws Exception {
        assertThatThrownBy(() -> RunRecordFile.read(resealed("\"duty_65536ths\": 65536", "\"duty_65536ths\": 65537")))
                .hasMessageContaining(": holds a value that cannot be: duty is 65537 parts, allowed are 0 to 65536. ");
    }

    @Test
    void aColumnOfAnotherLengthIsRefused() throws Exception {
        assertThatThrownBy(() -> RunRecordFile.read(resealed("\"armed\": [1,", "\"armed\": [1,1,")))
                .hasMessageContaining(": trace.samples.armed has 811 entries, count is 810. ");
    }

    @Test
    void aTextInPlaceOfANumberIsRefused() throws Exception {
        assertThatThrownBy(() -> RunRecordFile.read(resealed("\"pwm_hz\": 7812.0", "\"pwm_hz\": true")))
                .hasMessageContaining(": conditions.pwm_hz is not a number. ");
    }

    @Test
    void theExceptionCarriesItsParts() {
        Path file = folder.resolve("none.json");
        RunRecordException thrown = catchThrowableOfType(RunRecordException.class, () -> RunRecordFile.read(file));
        assertThat(thrown.file()).isEqualTo(file);
        assertThat(thrown.problem()).isEqualTo("is not there");
        assertThat(thrown.remedy()).isEqualTo("Check the name and the folder");
    }

    @Test
    void theDigestIsThatOfEveryLineAbove() throws Exception {
        List<String> lines = Files.readAllLines(written(FAIL));
        String above = String.join("\n", lines.subList(0, lines.size() - 2)) + "\n";
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(above.getBytes(StandardCharsets.UTF_8));
        assertThat(lines.get(lines.size() - 2))
                .isEqualTo(
                        "  \"sha256_of_all_lines_above\": \"" + HexFormat.of().formatHex(digest) + "\"");
    }

    /** A file of format 1, kept for good: whatever this program becomes, it must read what it once wrote. */
    @Test
    void aRecordWrittenByAnEarlierVersionStillReads() throws Exception {
        Path kept =
                Path.of(RunRecordFileTest.class.getResource("run-format-1.json").toURI());
        RunRecord run = RunRecordFile.read(kept);
        assertThat(run.grade().verdict()).isEqualTo(Verdict.FAIL);
        assertThat(run.trace().samples()).hasSize(810);
        assertThat(run.trace().samples().get(809).meters().get(0).edges()).isEqualTo(5_818);
        assertThat(run.grade().features())
                .hasSize(18)
                .allMatch(f -> f.limits().source().equals(Source.NOT_KEPT));
        assertThat(run.grade().features())
                .filteredOn(FeatureJudgement::judged)
                .hasSize(6)
                .allMatch(f -> f.feature().onTheWayUp());
        assertThat(run.intake()).isEqualTo(Intake.NONE);
        // Written again it is of today's format, and says the same.
        assertThat(RunRecordFile.read(written(run))).isEqualTo(run);
    }

    /** A run of the program before limits had a source: simulated pump, bad brushes, two points up and one down. */
    @Test
    void aRunOfTheFirstFormatIsReadWithTheLegsOfItsPoints() throws Exception {
        RunRecord run = RunRecordFile.read(Firmware.root().resolve("fixtures/old-records/run-1.json"));
        assertThat(run.grade().verdict()).isEqualTo(Verdict.FAIL);
        assertThat(run.grade().features())
                .extracting(f -> f.feature().key())
                .containsExactly(
                        "flow/up/50 %",
                        "motor amps/up/50 %",
                        "flow/up/100 %",
                        "motor amps/up/100 %",
                        "flow/down/50 %",
                        "motor amps/down/50 %");
        assertThat(run.grade().attempt()).isEqualTo(1);
        assertThat(run.rules()).isEmpty();
        assertThat(RunRecordFile.read(written(run))).isEqualTo(run);
    }

    private static void assertEmpty(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            assertThat(entries).isEmpty();
        }
    }

    private static RunRecord with(RunRecord run, Trace trace) {
        return new RunRecord(
                run.id(),
                run.startedAt(),
                run.software(),
                run.subject(),
                run.stand(),
                run.conditions(),
                run.plan(),
                run.curve(),
                run.ending(),
                run.grade(),
                trace);
    }

    @Test
    void findingsAreWrittenWithTheirUnitAndOnlyWhereThereAreSome() throws Exception {
        assertThat(Files.readString(written(SampleRecords.readings())))
                .contains("\"findings\": [{", "\"name\": \"start duty\"", "\"unit\": \"share\"", "\"value\": 0.152")
                .contains("\"word\": \"10 of 10\"");
    }

    @Test
    void aRecordWithoutFindingsHasNoListOfThem() throws Exception {
        assertThat(Files.readString(written(FAIL))).doesNotContain("\"findings\"");
    }
}
