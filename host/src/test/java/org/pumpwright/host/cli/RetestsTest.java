package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.record.RecordHead;
import org.pumpwright.host.record.RunRecordFile;

/** Units that are tested more than once. */
final class RetestsTest {
    private static final int A_WEEK_AND_A_DAY = 8 * 24 * 6;

    @TempDir
    private Path records;

    @Test
    void theFirstRunSaysNothingOfOthersAndTheSecondNamesTheFirst() throws Exception {
        assertThat(accept(1, "U1").text()).doesNotContain("of at most");
        Runs.Said second = accept(2, "u1 ");
        assertThat(second.text())
                .as("a serial is the same in any letters")
                .contains("Run 2 of this unit, of at most 3; before it " + ids().get(0) + " (PASS).");
        assertThat(attempts()).containsExactly(1, 2);
        assertThat(Files.readString(records.resolve(ids().get(1)).resolve("page.txt"))
                        .replaceAll("\\s+", " "))
                .contains("run 2 for this matter, after " + ids().get(0));
    }

    @Test
    void aThirdRetestIsRefusedBeforeAnythingMovesUnlessANamedPersonHasDecidedIt() throws Exception {
        for (int run = 1; run <= 3; run++) {
            assertThat(accept(run, "U1").code()).isEqualTo(ExitCode.PASS);
        }
        Runs.Said refused = accept(4, "U1");
        assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
        assertThat(refused.text())
                .contains("unit U1 had its 3 runs of this job: ")
                .contains("Testing until it passes proves nothing")
                .contains("--decided-by NAME --reason TEXT")
                .contains("--new-job")
                .doesNotContain("Armed");
        assertThat(ids()).hasSize(3);
        Runs.Said decided = accept(5, "U1", "--decided-by", "B. Second", "--reason", "new lead fitted");
        assertThat(decided.code()).isEqualTo(ExitCode.PASS);
        assertThat(decided.text()).contains("Decided by B. Second: new lead fitted.");
        assertThat(decided.text().replaceAll("\\s+", " ")).contains("decided by B. Second: new lead fitted");
        Path last = records.resolve(ids().get(3)).resolve("record.json");
        assertThat(RunRecordFile.read(last).intake().decision()).contains(new Decision("B. Second", "new lead fitted"));
        assertThat(attempts()).containsExactly(1, 2, 3, 4);
    }

    @Test
    void aNewJobBeginsToCountAnew() throws Exception {
        accept(1, "U1");
        accept(2, "U1");
        assertThat(accept(3, "U1", "--new-job").text()).doesNotContain("of at most");
        assertThat(accept(4, "U1").text()).contains("Run 2 of this unit, of at most 3; before it " + ids().get(2));
        assertThat(attempts()).containsExactly(1, 2, 1, 2);
    }

    @Test
    void whatComesBackAfterMoreThanAWeekBeginsANewJobByItself() throws Exception {
        accept(1, "U1");
        assertThat(accept(A_WEEK_AND_A_DAY, "U1").text()).doesNotContain("of at most");
        assertThat(attempts()).containsExactly(1, 1);
    }

    @Test
    void unitsWithoutASerialAreNeverCounted() throws Exception {
        for (int run = 1; run <= 5; run++) {
            assertThat(accept(run, "No Plate").code()).isEqualTo(ExitCode.PASS);
        }
        assertThat(attempts()).containsExactly(1, 1, 1, 1, 1);
    }

    @Test
    void aRunThatDoesNotCountUsesUpNoRetest() throws Exception {
        accept(1, "U1");
        Runs.Said bad = accept(2, "U1", "--fault", "low-supply", "--severity", "severe");
        assertThat(bad.code()).isEqualTo(ExitCode.STAND);
        assertThat(accept(3, "U1").text())
                .contains("Run 2 of this unit, of at most 3; before it " + ids().get(0) + " (PASS).");
        assertThat(attempts()).containsExactly(1, 2, 2);
    }

    @Test
    void anotherPlanOrAnotherUnitIsNoRetest() throws Exception {
        accept(1, "U1");
        assertThat(accept(2, "U2").text()).doesNotContain("of at most");
        assertThat(accept(3, "U1", "--plan", "zero-flow-12v-pump").text()).doesNotContain("of at most");
    }

    @Test
    void aRunThatIsJudgedAgainIsNoRetest() throws Exception {
        accept(1, "U1");
        assertThat(new CommandLineBench().run("grade", records.toString(), "--records", records.toString()))
                .isZero();
        assertThat(accept(2, "U1").text()).contains("Run 2 of this unit");
    }

    @Test
    void aDecisionHasANameAndAReason() throws Exception {
        Runs.Said said = accept(1, "U1", "--decided-by", "B. Second");
        assertThat(said.code()).isEqualTo(ExitCode.USAGE);
        assertThat(said.text())
                .contains("--decided-by and --reason belong together: a named person decides, and says why");
    }

    @Test
    void whatTheCustomerSaysIsKeptAndAnsweredApartFromTheVerdict() throws Exception {
        Runs.Said said = accept(
                1, "U1", "--complaint", "low", "--plan", "quick-12v-pump", "--fault", "slip", "--severity", "severe");
        assertThat(said.code()).isEqualTo(ExitCode.FAIL);
        assertThat(said.text().replaceAll("\\s+", " ")).contains("xplains the complaint \"low\": YES");
        Path file = records.resolve(ids().get(0)).resolve("record.json");
        assertThat(RunRecordFile.read(file).intake().complaint()).contains("low");
    }

    @Test
    void theNumbersBehindTheVerdictAreShownOnRequest() {
        String without = accept(1, "U1").text();
        String with = accept(2, "U2", "--numbers").text();
        assertThat(with.lines().count()).isGreaterThan(without.lines().count() + 5);
        assertThat(without).doesNotContain("day and technician");
        assertThat(with).contains("day and technician");
    }

    @Test
    void otherProgramsAreToldWhichRunItIs() throws Exception {
        accept(1, "U1");
        assertThat(accept(2, "U1", "--json").text())
                .contains("{\"event\":\"counts\",\"run_of_unit\":2,\"at_most\":3,\"earlier\":[\"" + ids().get(0)
                        + "\"]}");
    }

    private Runs.Said accept(int number, String serial, String... more) {
        return Runs.accept(records, number, serial, more);
    }

    private List<String> ids() throws IOException {
        return heads().stream().map(RecordHead::id).toList();
    }

    private List<Integer> attempts() throws IOException {
        return heads().stream().map(head -> head.attempt().orElseThrow()).toList();
    }

    /** Of the runs themselves, in the order in which they were run. */
    private List<RecordHead> heads() throws IOException {
        List<RecordHead> heads = new ArrayList<>();
        try (Stream<Path> all = Files.walk(records)) {
            for (Path file :
                    all.filter(each -> each.endsWith("record.json")).sorted().toList()) {
                heads.add(RecordHead.of(file).orElseThrow());
            }
        }
        return heads;
    }
}
