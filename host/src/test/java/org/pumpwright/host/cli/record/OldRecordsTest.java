package org.pumpwright.host.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.cli.CommandLineBench;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordFile;
import tools.jackson.databind.json.JsonMapper;

/** What earlier versions wrote is read by this one, and says the same as then. */
final class OldRecordsTest {
    private static final Path OLD = Firmware.root().resolve("fixtures/old-records");

    @TempDir
    private Path folder;

    private final CommandLineBench bench = new CommandLineBench();

    @Test
    void aRunOfTheSecondFormatIsReadWithItsClaim() throws Exception {
        RunRecord run = RunRecordFile.read(OLD.resolve("run-2.json"));

        assertThat(run.subject().serial()).isEqualTo("SN-104");
        assertThat(run.intake().claim()).contains("C-77");
        assertThat(run.grade().verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void aBucketTestOfTheFirstFormatIsReadWithItsCustomer() throws Exception {
        BucketRecord test = BucketRecordFile.read(OLD.resolve("bucket-1.json"));

        assertThat(test.meter().serial()).isEqualTo("M-0001");
        assertThat(test.job().customer()).isEqualTo("Example farm (invented)");
        assertThat(test.result().accepted()).isTrue();
    }

    @Test
    void aSignedContentIsWrittenTheSameToTheByte() throws Exception {
        JsonMapper json = new JsonMapper();
        String content = Files.readAllLines(OLD.resolve("ledger-1.jsonl")).stream()
                .map(line -> json.readTree(line).path("content").stringValue(""))
                .filter(each -> each.contains("pumpwright-run/2"))
                .findFirst()
                .orElseThrow();
        RunRecord run = RunRecordFile.read(OLD.resolve("run-2.json"));

        RunRecord read = RunContent.read(content, run.trace());
        assertThat(read.intake().handling()).isEqualTo(Handling.UNKNOWN);
        assertThat(RunContent.of(read)).isEqualTo(content);
        assertThat(RunContent.of(run)).isEqualTo(content);
    }

    @Test
    void allOfThemAreTakenInOnceAndTheAuditIsClean() {
        String records = folder.resolve("records").toString();
        for (String name : new String[] {"ledger-1.jsonl", "run-1.json", "run-2.json", "bucket-1.json"}) {
            assertThat(bench.run("record", "import", OLD.resolve(name).toString(), "--records", records))
                    .as(bench.err())
                    .isZero();
        }

        assertThat(bench.out())
                .contains("ledger-1.jsonl: 2 found, 2 new,", "run-1.json: 1 found, 1 new,")
                .contains("run-2.json: 1 found, 0 new,", "bucket-1.json: 1 found, 1 new,");
    }
}
