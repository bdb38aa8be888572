package org.pumpwright.host.cli.bucket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.cli.CommandLineBench;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.plant.MeterParameters;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.RunRecordException;

final class BucketCommandTest {
    private static final Path SHEETS = Firmware.root().resolve("fixtures/buckets");

    @TempDir
    private Path folder;

    private final CommandLineBench bench = new CommandLineBench();

    /** The example is worked out by hand and in another program; these are its printed digits. */
    @Test
    void theWeighedExampleGivesItsPrintedDigits() {
        assertThat(typed("weighed-example.yaml", "--numbers")).as(bench.err()).isEqualTo(ExitCode.PASS);

        assertThat(words())
                .contains("0.249 5 2970.2")
                .contains("K 2968.4", "K 2976.5", "K 2975.1", "K 2965.3", "K 2965.9")
                .contains("K 3004.0", "K 3007.8", "K 3006.0", "K 3008.6", "K 3000.0")
                .contains("K 3016.2", "K 3010.7", "K 3013.2", "K 3010.6", "K 3009.6")
                .contains("K 3014.6", "K 3015.8", "K 3012.2", "K 3012.5", "K 3015.3")
                .contains("K 3010.5 pulses per US gallon = 795.30 pulses per litre")
                .contains("K = 3017.4 x (1 - 0.0039 / flow)")
                .contains("scale certificate B 0.105 %", "splash, drip, hang-up B 0.122 %")
                .contains("repeatability of the mean A 0.079 %", "repeatability of the mean A 0.024 %")
                .contains("combined 0.055 % k = 2.20 U = 0.12 %", "combined 0.053 % k = 2.07 U = 0.11 %")
                .contains("Finding ACCEPTED.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"vessel-example.yaml", "master-example.yaml"})
    void theOtherMethodsGiveTheSameMetersK(String sheet) {
        assertThat(typed(sheet)).as(bench.out() + bench.err()).isEqualTo(ExitCode.PASS);
        BucketRecord record = onlyRecord();
        double perGallon = record.result().single().pulsesPerM3() * 3.785411784e-3;
        assertThat(Math.abs(perGallon / 3010.5 - 1))
                .isLessThan(record.result().single().relativeExpandedUncertainty());
    }

    @Test
    void runsFromACsvSheetGiveTheSame() {
        assertThat(typed(
                        "runs-example.csv",
                        "--bench",
                        SHEETS.resolve("bench-example.yaml").toString()))
                .as(bench.err())
                .isEqualTo(ExitCode.PASS);
        assertThat(words()).contains("K 3010.5 pulses per US gallon");
        assertThat(onlyRecord().flows().get(0).runs().get(0).reading()).isEqualTo("2799.0 - 902.0 g");
    }

    @Test
    void everyPaperIsWrittenAndTheRecordReadsBack() throws IOException {
        assertThat(typed("weighed-example.yaml", "--json")).isEqualTo(ExitCode.PASS);
        assertThat(bench.out().strip())
                .startsWith("{\"accepted\":true,\"k_pulses_per_m3\":")
                .endsWith("}");
        try (Stream<Path> files = Files.list(onlyFile().resolveSibling(""))) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "bucket.json", "report.html", "report.txt", "label.html", "label.txt", "certificate.xml");
        }
        BucketRecord record = onlyRecord();
        assertThat(record.practice()).isTrue();
        assertThat(record.source().text()).isEqualTo(Files.readString(SHEETS.resolve("weighed-example.yaml")));
        CommandLineBench again = new CommandLineBench();
        assertThat(again.run("bucket", "papers", onlyFile().toString())).isEqualTo(ExitCode.PASS);
        assertThat(again.out()).contains("CALIBRATION REPORT").contains("--- End of report ---");
    }

    @Test
    void productWithoutADensityIsRefused() throws IOException {
        refused(
                edited(
                        "liquid: { name: water, allowance_kg_per_m3: 0.2, half_width_kg_per_m3: 0.2 }",
                        "liquid: { name: 28-0-0 }"),
                "sheet.yaml:31: weighing product needs its measured density and temperature (28-0-0): weigh a known volume");
    }

    @Test
    void fewerThanThreeRunsAreRefused() throws IOException {
        Path sheet = write(Files.readString(SHEETS.resolve("weighed-example.yaml"))
                .replaceAll("      - \\{ net_grams: (1894|1899|1905|1902), .*\\n", ""));
        refused(sheet, "sheet.yaml:54: 1 run that counts at 0.25 gal/min, at least 3 are needed, better 5: make more.");
    }

    @Test
    void aBucketThatRanOverIsRefusedWithItsLine() throws IOException {
        Path sheet = edited("net_grams: 15140", "net_grams: 25140");
        refused(sheet, "caught 25.20 L, the bucket holds 19.00 L: it ran over, or a weight or unit is wrong: make");
        assertThat(bench.err()).contains("sheet.yaml:" + line(sheet, "25140") + ": run 16 ");
    }

    @Test
    void aFlowBelowTheMetersRangeIsRefused() throws IOException {
        refused(
                edited("made_for_least_gpm: 0.1 ", "made_for_least_gpm: 0.3 "),
                "run 1 has 0.25 gal/min, below the range: the meter is for 0.30 gal/min to 5.00 gal/min.");
    }

    @Test
    void aScaleOrThermometerPastDueIsRefused() throws IOException {
        refused(
                edited("due: 2027-01-20", "due: 2026-02-20"),
                "sheet.yaml:33: the certificate of the scale (S-2026-11) was due on 2026-02-20, the test is of 2026-03-02: have it"
                        + " calibrated, then test again.");
        refused(
                edited("due: 2027-01-12", "due: 2026-02-12"),
                "sheet.yaml:45: the certificate of the thermometer (T-2026-07) was due on 2026-02-12");
    }

    @Test
    void mixedUnitsAreRefusedWithBothLines() throws IOException {
        Path sheet = edited("net_grams: 7569", "net_pounds: 16.69");
        refused(
                sheet,
                "flows[1].runs[1].net_pounds is in pounds, line %d is in grams: units are mixed. Keep to one of them in the"
                        .formatted(line(sheet, "net_grams: 1897")));
    }

    @Test
    void aSlippedUnitIsFoundByItsRatio() throws IOException {
        refused(
                edited("gpm: 2\n", "gpm: 7.57\n"),
                "run 11 has 2.00 gal/min by volume and time, but was set to 7.57 gal/min: their ratio is that of US gallons and"
                        + " litres, units are mixed.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "flow_gpm;pulses | :1: columns are parted by semicolons",
                "flow,pulses,time_s,water_c,net_g | :1: column 'flow' has no unit: write flow_gpm or flow_lpm.",
                "flow_gpm,pulses,time_s,water_k,net_g | :1: column 'water_k' has the unit 'k', which is not known: write water_c or water_f.",
                "flow_gpm,pulses,time_s,water_c,tare_g,gross_kg | :1: tare is in g and gross in kg: units are mixed.",
                "flow_gpm,pulses,time_s,water_c,net_g/1,100,60,18,4,3785 | :2: 6 values for 5 columns: a decimal comma parts a value in two. Write decimals with a point, as in 18.4.",
                "flow_gpm,pulses,time_s,water_c,net_g/1,100,60,\"18,4\",3785 | :2: water_c is '18,4': write decimals with a point and no thousands sign, as in 18.4.",
                "flow_gpm,pulses,time_s,water_c,net_g/1,,60,18.4,3785 | :2: pulses is empty: fill it in.",
                "flow_gpm,pulses,time_s,water_c | there is no run in it.",
            })
    void aCsvSheetIsReadStrictly(String example) throws IOException {
        String[] parts = example.split(" \\| ", -1);
        Path csv = Files.writeString(folder.resolve("runs.csv"), parts[0].replace('/', '\n') + "\n");
        assertThat(bench.run(
                        "bucket",
                        "--typed",
                        csv.toString(),
                        "--bench",
                        SHEETS.resolve("bench-example.yaml").toString()))
                .isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains(parts[1]);
    }

    @Test
    void aRunLeftOutNeedsAReasonWhichIsPrinted() throws IOException {
        Path sheet = edited(
                "{ net_grams: 1905, pulses: 1496 }",
                "{ net_grams: 1905, pulses: 1496, left_out: the hose slipped off }");
        assertThat(run(sheet)).as(bench.err()).isEqualTo(ExitCode.PASS);
        assertThat(words()).contains("Deviation Run 5 was left out: the hose slipped off.");
        assertThat(Files.readString(onlyFile().resolveSibling("report.txt")))
                .contains("LEFT OUT: the hose slipped off");
    }

    @Test
    void aRuleThatDoesNotHoldFailsUnlessSomebodyOverridesItInWriting() throws IOException {
        Path sheet = edited("previous_pulses_per_us_gallon: 2992", "previous_pulses_per_us_gallon: 2900");
        assertThat(run(sheet)).isEqualTo(ExitCode.FAIL);
        assertThat(words())
                .contains("DOES NOT HOLD change since the previous K: +3.81 %; allowed 1.5 %, else explain")
                .contains("NOT ACCEPTED");
        CommandLineBench again = new CommandLineBench();
        assertThat(again.run(
                        "bucket",
                        "--typed",
                        sheet.toString(),
                        "--records",
                        folder.resolve("second").toString(),
                        "--override",
                        "new rotor fitted"))
                .isEqualTo(ExitCode.PASS);
        assertThat(again.out().replaceAll("\\s+", " "))
                .contains("It was overridden by A. Example: new rotor fitted.")
                .contains("ACCEPTED, with a rule overridden: the reason stands on the report.");
    }

    @Test
    void anAmendedReportNamesTheOldOne() {
        assertThat(typed("weighed-example.yaml")).isEqualTo(ExitCode.PASS);
        CommandLineBench again = new CommandLineBench();
        String old = onlyFile().toString();
        assertThat(again.run(
                        "bucket",
                        "--typed",
                        SHEETS.resolve("weighed-example.yaml").toString(),
                        "--records",
                        folder.resolve("second").toString(),
                        "--amends",
                        old,
                        "--because",
                        "customer's name corrected"))
                .as(again.err())
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.run("bucket", "--typed", "x.yaml", "--amends", old)).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void theWayBackIsShownAndHeldAgainstTheMainPass() throws IOException {
        Path sheet = write(Files.readString(SHEETS.resolve("weighed-example.yaml"))
                + "  - gpm: 1\n    leg: back\n    seconds: 120\n    celsius: 18.4\n    runs:\n"
                + "      - { net_grams: 7580, pulses: 5990 }\n      - { net_grams: 7581, pulses: 5993 }\n");
        assertThat(run(sheet)).isEqualTo(ExitCode.FAIL);
        assertThat(words())
                .contains("DOES NOT HOLD same K on the way back: -0.67 % at 1.00 gal/min; chance alone explains")
                .contains("down K 3010.5");
        assertThat(Files.readString(onlyFile().resolveSibling("report.txt")))
                .contains("take their U")
                .contains("5993");
    }

    @Test
    void bothStatesOfAnAdjustedMeterStandOnTheReport() throws IOException {
        assertThat(typed("weighed-example.yaml")).isEqualTo(ExitCode.PASS);
        Path first = onlyFile();
        Path second = folder.resolve("second");
        Path sheet = edited("state: as-found", "state: as-left");
        assertThat(new CommandLineBench()
                        .run(
                                "bucket",
                                "--typed",
                                sheet.toString(),
                                "--before",
                                first.toString(),
                                "--records",
                                second.toString()))
                .isEqualTo(ExitCode.PASS);
        try (Stream<Path> files = Files.walk(second)) {
            Path report = files.filter(file -> file.endsWith("report.txt"))
                    .findFirst()
                    .orElseThrow();
            assertThat(Files.readString(report).replaceAll("\\s+", " "))
                    .contains("as left; as found: K 3010.5 pulses/US gal (+0.00 %)");
        }
    }

    @Test
    void theFieldFormGivesANewK() {
        assertThat(bench.run("bucket", "field", "--old-k", "3000", "--indicated", "10.4", "--caught", "10"))
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.out())
                .contains("The monitor showed +4.00 % against what was caught.")
                .contains("New K          3120.0 pulses per US gallon = 824.22 pulses per litre");
        bench.run("bucket", "field", "--old-k", "3000", "--indicated", "10", "--caught", "37.85");
        assertThat(bench.out()).contains("CAUTION").contains("the ratio of US gallons and litres");
    }

    /** 20 nozzle catches, mL/min: the flowgrap example of the manual of the R package AgroTech 1.0.2; one is beyond 5 %. */
    @Test
    void theCatchTestFindsTheRowThatIsOff() {
        String[] caught =
                ("bucket catch 881 854 865 876 906.3 874.7 868.3 878.7 872.7 901.7 823.3 889.7 861.3 900.3 890.3"
                                + " 886.7 916.7 872 912.7 894")
                        .split(" ");
        assertThat(bench.run(caught)).isEqualTo(ExitCode.FAIL);
        assertThat(bench.out())
                .contains("Mean 881.27 over 20 rows, coefficient of variation 2.49 %")
                .contains("row  11     823.30    -6.6 %  OFF")
                .contains("1 of 20 rows are off.");
    }

    /** Louisiana State Univ. AgCenter, "Ounces equal gallons": 40 in rows, 102 ft, 17 s, 14 oz from both nozzles. */
    @Test
    void theOunceMethodFollowsThePublishedExample() {
        assertThat(bench.run("bucket", "ounces", "--spacing", "40", "--speed", "4.0909", "--ounces", "14"))
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.out())
                .contains("Course         102.1 ft")
                .contains("Time           17.0 s")
                .contains("Rate           14.00 gal/acre");
    }

    @Test
    void theDivertersTimingIsFoundFromLongAndShortRuns() {
        assertThat(bench.run(
                        "bucket",
                        "diverter",
                        "--long",
                        "3010,3012,3011",
                        "--long-seconds",
                        "120",
                        "--short",
                        "3024,3026,3022",
                        "--short-seconds",
                        "20"))
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.out())
                .contains("Counted longer than caught by +0.104 s")
                .contains("adjust the switch and try again");
    }

    @Test
    void aNewSheetIsWrittenOnceAndCanBeRead() throws IOException {
        Path sheet = folder.resolve("mine.yaml");
        assertThat(bench.run("bucket", "new-sheet", sheet.toString())).isEqualTo(ExitCode.PASS);
        assertThat(bench.run("bucket", "new-sheet", sheet.toString())).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("is already there: nothing was written, choose another name");
        assertThat(run(sheet)).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("allowed is a day such as 2026-03-02");
        Files.writeString(
                sheet, Files.readString(sheet).replaceAll("(date|calibrated|due): \"\\?\"", "$1: 2026-03-02"));
        assertThat(run(sheet)).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("technician is still ?: fill it in").contains("scale.certificate is still ?");
        Files.writeString(sheet, Files.readString(sheet).replace("\"?\"", "X"));
        assertThat(run(sheet)).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err())
                .contains("mine.yaml:" + line(sheet, "flows:"))
                .contains("runs at 1 flow, a K over the flow needs at least 3, better 5: test at more.");
    }

    @Test
    void aRangeThatWasNotTestedIsNotAccepted() throws IOException {
        Path sheet = edited("  most_gpm: 4\n", "  most_gpm: 4.5\n");
        assertThat(run(sheet)).isEqualTo(ExitCode.FAIL);
        assertThat(words())
                .contains("DOES NOT HOLD tested over the whole range: 4.50 gal/min was not tested, the flows were 0.25"
                        + " gal/min to 4.00 gal/min: test there too, or declare a shorter range");
    }

    @Test
    void aNextDayMustBeADay() {
        assertThat(typed("weighed-example.yaml", "--next", "soon")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("--next is 'soon': a day such as 2027-03-02 is needed");
    }

    @Test
    void aGuidedTestOnTheSimulatedStandFindsTheMetersK() throws IOException {
        assertThat(bench.run(
                        "bucket",
                        "--stand",
                        "simulated",
                        "--bench",
                        SHEETS.resolve("simulated-bench.yaml").toString(),
                        "--duties",
                        "50,75,100",
                        "--runs",
                        "3",
                        "--seconds",
                        "60",
                        "--records",
                        folder.toString()))
                .as(bench.out() + bench.err())
                .isEqualTo(ExitCode.PASS);
        BucketRecord record = onlyRecord();
        assertThat(record.practice()).isTrue();
        assertThat(record.flows()).hasSize(3);
        MeterParameters truth = new PumpPopulation(1).unit(0).meter();
        for (BucketRecord.Flow flow : record.flows()) {
            double k = truth.pulsesPerSecond(flow.m3PerSecond()) / flow.m3PerSecond();
            assertThat(flow.k().pulsesPerM3()).isCloseTo(k, within(k * flow.k().relativeExpandedUncertainty()));
        }
        assertThat(bench.out()).contains("Swing the diverter INTO the bucket").contains("The stand is safe.");
        try (Stream<Path> files = Files.list(folder)) {
            Path runs = files.filter(file -> file.toString().endsWith(".csv"))
                    .findFirst()
                    .orElseThrow();
            assertThat(Files.readAllLines(runs)).hasSize(10);
        }
    }

    @Test
    void aBenchThatIsOutOfDateIsRefusedBeforeAnythingMoves() throws IOException {
        Path old =
                write(Files.readString(SHEETS.resolve("simulated-bench.yaml")).replace("due: 2027", "due: 2026"));
        assertThat(bench.run(
                        "bucket", "--stand", "simulated", "--bench", old.toString(), "--records", folder.toString()))
                .isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("the certificate of the scale").contains("was due on 2026-01-20");
        assertThat(bench.out()).doesNotContain("Run 1 of");
    }

    @Test
    void aBucketThatWouldRunOverEndsTheTestSafeAndKeepsWhatWasMeasured() throws IOException {
        Path small = write(Files.readString(SHEETS.resolve("simulated-bench.yaml"))
                .replace("bucket: { litres: 19,", "bucket: { litres: 6,"));
        assertThat(bench.run(
                        "bucket",
                        "--stand",
                        "simulated",
                        "--bench",
                        small.toString(),
                        "--duties",
                        "50,100",
                        "--runs",
                        "1",
                        "--seconds",
                        "60",
                        "--records",
                        folder.toString()))
                .isEqualTo(ExitCode.STAND);
        assertThat(bench.err())
                .contains("was cut short: the bucket would run over")
                .contains("The board says that it is safe.")
                .contains("Go on with 'pumpwright bucket --typed");
    }

    private void refused(Path sheet, String message) {
        assertThat(run(sheet)).as(bench.out()).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains(message);
    }

    private Path edited(String from, String to) throws IOException {
        String text = Files.readString(SHEETS.resolve("weighed-example.yaml"));
        assertThat(text).contains(from);
        return write(text.replace(from, to));
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("sheet.yaml"), text);
    }

    private static int line(Path sheet, String part) throws IOException {
        List<String> lines = Files.readAllLines(sheet);
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).contains(part)) {
                return i + 1;
            }
        }
        throw new AssertionError(part);
    }

    private int typed(String sheet, String... more) {
        return run(SHEETS.resolve(sheet), more);
    }

    private int run(Path sheet, String... more) {
        return bench.run(Stream.concat(
                        Stream.of("bucket", "--typed", sheet.toString(), "--records", folder.toString()),
                        Stream.of(more))
                .toArray(String[]::new));
    }

    private String words() {
        return bench.out().replaceAll("\\s+", " ");
    }

    private Path onlyFile() {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.endsWith("bucket.json"))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private BucketRecord onlyRecord() {
        try {
            return BucketRecordFile.read(onlyFile());
        } catch (RunRecordException e) {
            throw new AssertionError(e);
        }
    }
}
