package org.pumpwright.host.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.Regrader;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.record.StoreChoice;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.cli.CommandLineBench;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;

/** What is on record, from the test of a unit to another shop's desk, as a person would have it done. */
final class RecordCommandTest {
    private static final String CUSTOMER = "Example farm (invented)";
    private static final List<String> KINDS =
            List.of("demo-pump", "demo-hydraulic-pump", "demo-driver", "demo-meter", "demo-harness");

    @TempDir
    private static Path shop;

    @TempDir
    private Path elsewhere;

    private CommandLineBench desk = bench(0);

    private static CommandLineBench bench(int minutes) {
        return new CommandLineBench(
                Clock.offset(CommandLineBench.CLOCK, Duration.ofMinutes(minutes)),
                shop.resolve("spare"),
                Map.of("PUMPWRIGHT_KEYS", shop.resolve("keys").toString()));
    }

    private static String records() {
        return shop.resolve("records").toString();
    }

    /** One unit of each kind, a bucket test with a customer, and the runs graded again. */
    @BeforeAll
    static void aDayInTheShop() {
        int minutes = 0;
        for (String model : KINDS) {
            CommandLineBench bench = bench(minutes += 10);
            bench.run(
                    "practice",
                    "--model",
                    model,
                    "--fault",
                    "healthy",
                    "--seed",
                    "5",
                    "--serial",
                    "SN-" + model,
                    "--technician",
                    "J. Invented",
                    "--quiet",
                    "--records",
                    records());
            assertThat(bench.out()).as(bench.err()).contains("Record         ").doesNotContain("CAUTION");
        }
        CommandLineBench bucket = bench(minutes += 10);
        Path sheet = Firmware.root().resolve("fixtures/buckets/weighed-example.yaml");
        assertThat(bucket.run("bucket", "--typed", sheet.toString(), "--records", records()))
                .as(bucket.err())
                .isZero();
        CommandLineBench again = bench(minutes + 10);
        assertThat(again.run("grade", records(), "--records", records()))
                .as(again.out() + again.err())
                .isZero();
    }

    @BeforeEach
    void aFreshDesk() {
        desk = bench(200);
    }

    private String told(String... words) {
        CommandLineBench bench = bench(200);
        assertThat(bench.run(words)).as(bench.err()).isZero();
        return bench.out();
    }

    private List<Entry> runs(EntryKind kind) throws Exception {
        try (RecordStore store = choice().openToRead()) {
            return store.search(Search.newest(50).ofKind(kind));
        }
    }

    private static StoreChoice choice() {
        return StoreChoice.of(
                Optional.empty(), Map.of("PUMPWRIGHT_KEYS", shop.resolve("keys").toString()), Path.of(records()), shop);
    }

    @Test
    void everyRunIsOnRecordOnceWithItsStandAndNothingWaits() throws Exception {
        assertThat(runs(EntryKind.RUN))
                .hasSize(KINDS.size())
                .allMatch(entry -> entry.id().startsWith("simulated/2026"));
        assertThat(runs(EntryKind.STAND)).hasSize(1);
        assertThat(runs(EntryKind.GRADE))
                .hasSize(KINDS.size())
                .allMatch(entry -> entry.chain().equals("desk"));
        assertThat(runs(EntryKind.BUCKET_TEST)).hasSize(1);
        assertThat(told("record", "enter", "--records", records()))
                .isEqualTo("Nothing waits: everything that was kept is on record." + System.lineSeparator());
    }

    /** Content and trace are all that is needed: the run is the one in the folder, to the last bit, and so is its grade. */
    @Test
    void aRunOfEveryKindComesBackFromTheRecordEqualAndSmall() throws Exception {
        Instant now = Instant.parse("2026-03-03T00:00:00Z");
        Regrader judge = new Regrader(
                new Shelf(Firmware.root().resolve("fixtures")), Optional.empty(), Optional.empty(), UnitSystem.US);
        long json = 0;
        long csv = 0;
        long blobs = 0;
        try (RecordStore store = choice().openToRead()) {
            for (Entry entry : runs(EntryKind.RUN)) {
                Path file = Path.of(records(), entry.id().split("/")[1], "record.json");
                RunRecord run = RunRecordFile.read(file);
                byte[] blob = store.attachment(entry.attachments().get(0)).orElseThrow();
                RunRecord back = RunContent.read(entry.content(), blob);

                assertThat(back).isEqualTo(run);
                assertThat(judge.judge(back, now).record())
                        .isEqualTo(judge.judge(run, now).record());
                json += Files.size(file);
                blobs += blob.length;
                csv += gzip(told(
                        "record",
                        "export",
                        "--csv-trace",
                        "--serial",
                        run.subject().serial(),
                        "--kind",
                        "run",
                        "--records",
                        records()));
            }
        }
        System.out.printf("five runs: record.json %d bytes, CSV under gzip %d, blobs %d%n", json, csv, blobs);
        assertThat(blobs).isLessThan(csv / 2).isLessThan(json / 8);
    }

    private static long gzip(String text) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.size();
    }

    @Test
    void gradingAgainFromTheRecordGivesTheSameGradeAsTheRunHad() throws Exception {
        for (Entry entry : runs(EntryKind.GRADE)) {
            String again = entry.content();
            String origin = again.replaceFirst(".*\"regraded_from\":\"([^\"]+)\".*", "$1");
            String first = told("record", "show", origin, "--json", "--records", records());

            assertThat(grade(again)).isEqualTo(grade(first));
        }
    }

    private static String grade(String content) {
        return content.substring(content.indexOf("\"grade\":"), content.indexOf("\"id\":\"2026"));
    }

    @Test
    void aUnitIsFoundByTheBeginningOfItsSerialAndShown() {
        String found = told("record", "find", "--serial", "sn-demo-p", "--kind", "run", "--records", records());
        assertThat(found)
                .contains("SN-demo-pump", "PASS", "simulated/20260302T")
                .doesNotContain("SN-demo-meter");

        String id = found.replaceFirst("(?s).*simulated/(\\S+).*", "$1");
        assertThat(told("record", "show", id, "--records", records()))
                .contains(
                        "Kind           run, entry ",
                        "Signature      holds",
                        "verdict: pass",
                        "technician: J. Invented");
        assertThat(desk.run("record", "show", "nothing-like-it", "--records", records()))
                .isEqualTo(ExitCode.USAGE);
        assertThat(desk.err()).contains("there is no entry nothing-like-it on record.");
    }

    @Test
    void aVisitBeforeIsToldAtTheNextTest() {
        String folder = elsewhere.resolve("new").toString();
        String[] practice = {
            "practice", "--fault", "healthy", "--seed", "6", "--serial", "sn-9", "--quiet", "--records", folder
        };
        CommandLineBench first = bench(20_000);
        first.run(practice);
        assertThat(first.out()).doesNotContain("was here before");
        CommandLineBench again = bench(40_000);
        again.run(practice);
        assertThat(again.out()).contains("This unit was here before (serial sn-9):");
    }

    @Test
    void whatIsExportedIsTakenInElsewhereOnceAndTheAuditThereIsClean() throws Exception {
        Path lines = elsewhere.resolve("all.jsonl");
        told("record", "export", "--json-lines", "--with-customer", "--out", lines.toString(), "--records", records());
        String other = elsewhere.resolve("records").toString();

        assertThat(told("record", "import", lines.toString(), "--records", other))
                .contains(" 0 were on record already.");
        assertThat(told("record", "import", lines.toString(), "--records", other))
                .contains(" 0 new, ");
        assertThat(told("record", "audit", "--records", other)).contains("all as they were signed.");
        assertThat(told("record", "audit", "--records", records())).contains("all as they were signed.");
        assertThat(told("record", "find", "--customer", "example farm", "--records", other))
                .contains(CUSTOMER);
    }

    @Test
    void aChangedOrTornFileIsRefusedAndNothingOfItTaken() throws Exception {
        Path lines = elsewhere.resolve("all.jsonl");
        told("record", "export", "--json-lines", "--with-customer", "--out", lines.toString(), "--records", records());
        String whole = Files.readString(lines);
        String other = elsewhere.resolve("records").toString();
        Path changed =
                Files.writeString(elsewhere.resolve("changed.jsonl"), whole.replace("SN-demo-meter", "SN-demo-mETER"));
        Path torn = Files.writeString(
                elsewhere.resolve("torn.jsonl"), whole.substring(0, whole.lastIndexOf("{\"header\"")));

        assertThat(desk.run("record", "import", changed.toString(), "--records", other))
                .isEqualTo(ExitCode.USAGE);
        assertThat(desk.err()).contains("changed.jsonl, line ", "Nothing was taken;");
        assertThat(desk.run("record", "import", torn.toString(), "--records", other))
                .isEqualTo(ExitCode.USAGE);
        assertThat(desk.err()).contains("was cut off");
        assertThat(desk.run("record", "find", "--records", other)).isEqualTo(ExitCode.STAND);
    }

    /** The customer is in the finder and in the sheet beside a bucket test; neither leaves the shop unasked. */
    @Test
    void nothingThatLeavesForAFactorySaysWhoseUnitItWas() throws Exception {
        Path lines = elsewhere.resolve("factory.jsonl");
        Path packet = elsewhere.resolve("factory.zip");
        told("record", "export", "--json-lines", "--out", lines.toString(), "--records", records());
        told("record", "export", "--packet", "--out", packet.toString(), "--records", records());

        assertThat(told("record", "export", "--json-lines", "--with-customer", "--records", records()))
                .contains(CUSTOMER);
        assertThat(Files.readString(lines)).contains("SN-demo-pump").doesNotContainIgnoringCase("example farm");
        try (ZipFile zip = new ZipFile(packet.toFile())) {
            assertThat(zip.stream().map(each -> each.getName())).contains("MANIFEST.sha256", "keys/simulated.pub");
            zip.stream().forEach(each -> {
                try {
                    byte[] bytes = zip.getInputStream(each).readAllBytes();
                    assertThat(new String(bytes, StandardCharsets.ISO_8859_1))
                            .as(each.getName())
                            .doesNotContainIgnoringCase("example farm");
                } catch (IOException e) {
                    throw new AssertionError(e);
                }
            });
        }
        assertThat(desk.run("record", "import", lines.toString(), "--records", elsewhere.toString()))
                .isEqualTo(ExitCode.USAGE);
        assertThat(desk.err()).contains("was left out when it was exported");
    }

    @Test
    void aTableOfRunsHasALineForEach() {
        List<String> lines = told("record", "export", "--csv", "--kind", "run", "--records", records())
                .lines()
                .toList();

        assertThat(lines).hasSize(1 + KINDS.size());
        assertThat(lines.get(0)).startsWith("id,started_at,kind,model,serial,");
        assertThat(lines.get(1)).contains(",demo-pump,SN-demo-pump,true,");
    }

    @Test
    void aCorrectionIsAnEntryOfItsOwnAndBothAreShown() throws Exception {
        Path lines = elsewhere.resolve("all.jsonl");
        told("record", "export", "--json-lines", "--with-customer", "--out", lines.toString(), "--records", records());
        String other = elsewhere.resolve("records").toString();
        told("record", "import", lines.toString(), "--records", other);
        String id = runs(EntryKind.RUN).get(0).id();

        told(
                "record",
                "amend",
                id,
                "--serial",
                "SN-RIGHT",
                "--by",
                "A. Person",
                "--reason",
                "misread",
                "--records",
                other);

        assertThat(told("record", "show", id, "--records", other))
                .contains("serial: SN-demo-harness", "because: misread", "is: SN-RIGHT", "was: SN-demo-harness");
        assertThat(told("record", "find", "--serial", "SN-RIGHT", "--records", other))
                .contains(id + "/amended-1");
        assertThat(told("record", "audit", "--records", other)).contains("all as they were signed.");
        assertThat(desk.run("record", "amend", id, "--by", "A. Person", "--reason", "x", "--records", other))
                .isEqualTo(ExitCode.USAGE);
        assertThat(desk.err()).contains("nothing is corrected");
    }

    @Test
    void aBackupIsRestoredIntoAnEmptyStoreOnly() throws Exception {
        told("record", "backup", elsewhere.resolve("stick").toString(), "--records", records());
        Path backup;
        try (var files = Files.list(elsewhere.resolve("stick"))) {
            backup = files.filter(file -> file.toString().endsWith(".backup"))
                    .findFirst()
                    .orElseThrow();
        }
        String other = elsewhere.resolve("records").toString();

        assertThat(told("record", "restore", backup.toString(), "--records", other))
                .contains("checked.");
        assertThat(told("record", "find", "--kind", "run", "--records", other))
                .isEqualTo(told("record", "find", "--kind", "run", "--records", records()));
        assertThat(desk.run("record", "restore", backup.toString(), "--records", other))
                .isEqualTo(ExitCode.USAGE);
        assertThat(desk.err()).contains("a backup goes into an empty store only");
    }

    @Test
    void thatTheEndWasCutOffShowsByTheEndsWrittenDown() throws Exception {
        Path heads = elsewhere.resolve("heads.txt");
        told("record", "audit", "--write-heads", heads.toString(), "--records", records());
        assertThat(Files.readString(heads)).contains(" simulated\n", " desk\n");
        Path shorter = elsewhere.resolve("records");
        told("practice", "--fault", "healthy", "--seed", "1", "--quiet", "--records", shorter.toString());

        assertThat(desk.run("record", "audit", "--heads", heads.toString(), "--json", "--records", shorter.toString()))
                .isEqualTo(ExitCode.FAIL);
        assertThat(desk.out()).contains("\"clean\":false", "cut off");
    }

    @Test
    void aStoreThatIsNoStoreCostsNoRunAndNoVerdictAndIsTold() throws Exception {
        Path records = Files.createDirectories(elsewhere.resolve("records"));
        Path inTheWay = Files.createDirectories(records.resolve("ledger.db"));
        CommandLineBench bench = bench(300);

        assertThat(bench.run(
                        "accept",
                        "--stand",
                        "simulated",
                        "--model",
                        "demo-pump",
                        "--serial",
                        "S-9",
                        "--records",
                        records.toString()))
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.out()).contains("CAUTION        Not on record yet: ", "2 waiting, safe in the folder;");
        Files.delete(inTheWay);

        assertThat(told("record", "enter", "--records", records.toString()))
                .contains("On record      stand/simulated/", "On record      simulated/20260302T141500.000Z");
        assertThat(told("record", "find", "--serial", "S-9", "--records", records.toString()))
                .contains("PASS");
    }

    @Test
    void anAddressThatIsNoneIsRefusedWithAnExample() {
        assertThat(desk.run("record", "find", "--store", "mysql://x", "--records", records()))
                .isEqualTo(ExitCode.USAGE);
        assertThat(desk.err()).contains("the store 'mysql://x' is no address of a server.");
    }

    @Test
    void aServerThatIsAwayCostsNoRunAndIsToldWithoutThePassword() {
        CommandLineBench bench = bench(400);
        String records = elsewhere.resolve("records").toString();

        assertThat(bench.run(
                        "accept",
                        "--stand",
                        "simulated",
                        "--model",
                        "demo-pump",
                        "--serial",
                        "S-10",
                        "--store",
                        "jdbc:postgresql://127.0.0.1:1/none?user=u&password=secret",
                        "--records",
                        records))
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.out()).contains("Not on record yet: ").doesNotContain("secret");
    }
}
