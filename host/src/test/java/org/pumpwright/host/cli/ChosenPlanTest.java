package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.trace.Ending;

/** What a command makes of a complaint, and of a duty held by hand. */
final class ChosenPlanTest {
    @TempDir
    private Path records;

    private final CommandLineBench bench = new CommandLineBench();

    @Test
    void theComplaintPicksThePlanAndSaysWhy() {
        accept("--complaint", "wont-start");
        assertThat(bench.out())
                .contains(
                        "Complaint 'wont-start': plan restart-12v-pump, because one dead spot shows in ten starts, not in"
                                + " one.");
        assertThat(CommandLineBench.onlyRecord(records).plan()).startsWith("restart-12v-pump v");
    }

    @Test
    void aPlanThatIsGivenGoesBeforeTheComplaint() {
        accept("--complaint", "wont-start", "--plan", "zero-flow-12v-pump");
        assertThat(CommandLineBench.onlyRecord(records).plan()).startsWith("zero-flow-12v-pump v");
    }

    @Test
    void anUnknownComplaintRunsNothing() {
        assertThat(accept("--complaint", "rattles")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("there is no complaint 'rattles'. Known are: no-flow, low");
        assertThat(records).isEmptyDirectory();
    }

    @Test
    void whatIsDrivenByHandIsKeptAndNotGraded() throws Exception {
        int code = drive("--duty", "40", "--seconds", "3");
        RunRecord record = CommandLineBench.onlyRecord(records);
        assertThat(code).as(bench.err()).isEqualTo(ExitCode.INCONCLUSIVE);
        assertThat(record.plan()).isEqualTo("manual v1");
        assertThat(record.ending().kind()).isEqualTo(Ending.Kind.COMPLETED);
        assertThat(record.grade().verdict()).isEqualTo(Verdict.NOT_TESTED);
        assertThat(record.grade().reasons()).first().isEqualTo("MANUAL - NOT GRADED");
        assertThat(record.trace().stretches())
                .filteredOn(stretch -> stretch.step().equals("hold"))
                .singleElement()
                .satisfies(stretch -> assertThat(stretch.seconds()).isBetween(2.9, 3.1));
        assertThat(bench.out()).contains("MANUAL: no plan, no verdict.", "MANUAL - NOT GRADED");
        for (String page : new String[] {"page.txt", "page.html"}) {
            assertThat(records.resolve(record.id()).resolve(page)).content().contains("MANUAL - NOT GRADED");
        }
    }

    @Test
    void theValveCanBeDrivenByHandToo() {
        drive("--duty", "60", "--seconds", "8", "--drive", "1", "--meter", "1");
        RunRecord record = CommandLineBench.onlyRecord(records);
        var samples = record.trace().samples();
        var last = samples.get(samples.size() - 1);
        assertThat(last.applied().get(1).percent()).isBetween(59.0, 61.0);
        assertThat(last.applied().get(0).parts()).isZero();
        assertThat(last.meters().get(1).edges() - samples.get(0).meters().get(1).edges())
                .isGreaterThan(500);
    }

    @Test
    void aDutyBeyondFullIsRefused() {
        assertThat(drive("--duty", "120", "--seconds", "3")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("120", "100", "%");
        assertThat(records).isEmptyDirectory();
    }

    @Test
    void anHourByHandIsRefused() {
        assertThat(drive("--duty", "50", "--seconds", "3600")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("3600", "600", "s");
        assertThat(records).isEmptyDirectory();
    }

    private int accept(String... more) {
        return run("accept", new String[] {"--stand", "simulated", "--model", "demo-pump"}, more);
    }

    private int drive(String... more) {
        return run("stand", new String[] {"drive", "--stand", "simulated"}, more);
    }

    private int run(String command, String[] common, String[] more) {
        List<String> words = new ArrayList<>();
        words.add(command);
        words.addAll(List.of(common));
        words.addAll(List.of(more));
        words.addAll(List.of("--records", records.toString()));
        return bench.run(words.toArray(String[]::new));
    }
}
