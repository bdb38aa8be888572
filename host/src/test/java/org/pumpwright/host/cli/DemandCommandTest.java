package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.catalog.FluidFile;

final class DemandCommandTest {
    private static final String[] SIXTEEN_ROWS = {
        "demand", "--rows", "16", "--spacing", "30", "--rate", "5", "--speed", "5.5"
    };

    @TempDir
    private Path folder;

    private final CommandLineBench bench = new CommandLineBench();

    /** 5 gal/acre x 5.5 mph x 30 in / 5940 is 0.139 gal/min a row and 2.22 for 16 rows. */
    @Test
    void aPlantersDemandIsPrinted() {
        assertThat(run("--k", "3000")).as(bench.err()).isEqualTo(ExitCode.PASS);
        assertThat(bench.out())
                .contains("Needed a row   0.139 gal/min of product")
                .contains("Needed in all  2.222 gal/min of product")
                .contains("At the meter   111.1 pulses/s with 16 rows on it (K 3000.0 pulses/US gal)");
    }

    @Test
    void productThroughNozzlesAsksForMore() {
        assertThat(run("--product", "uan-32", "--available-gpm", "2.7")).isEqualTo(ExitCode.INCONCLUSIVE);
        assertThat(bench.out())
                .contains("11.06 lb/gal (1325 kg/m3), specific gravity 1.326, root 1.152")
                .contains("As water       2.559 gal/min")
                .contains("Margin         +5.5 %; wanted is +15 %")
                .contains("Fastest        5.80 mph at this rate, with nothing to spare")
                .contains("TIGHT: enough for the rate, without the spare that is wanted.");
    }

    @Test
    void densityDoesNotCountWhereNothingMetersByPressure() {
        assertThat(run("--product", "uan-32", "--no-nozzles", "--available-gpm", "2.7"))
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.out()).doesNotContain("As water").contains("Margin         +21.5 %");
    }

    @Test
    void tooLittleIsSaid() {
        assertThat(run("--available-gpm", "2")).isEqualTo(ExitCode.FAIL);
        assertThat(bench.out()).contains("TOO LITTLE: drive slower, put out less, or fit a larger unit.");
    }

    @Test
    void ownDensityTakesThePlaceOfThePublishedOne() {
        assertThat(run("--product", "starter-of-the-shop", "--density-lb-gal", "11.1"))
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.out())
                .contains("starter-of-the-shop, as you weighed it")
                .doesNotContain("Note");
    }

    @Test
    void disagreeingSourcesAreTold() {
        assertThat(run("--product", "app-10-34-0")).isEqualTo(ExitCode.PASS);
        assertThat(words()).contains("published densities of it are 2.2 % apart: weigh your own, --density-lb-gal.");
    }

    @Test
    void theMarginAgainstAStoredRunCarriesItsUncertainty() throws IOException {
        Path records = folder.resolve("records");
        assertThat(new CommandLineBench()
                        .run("accept", "--stand", "simulated", "--model", "demo-pump", "--records", records.toString()))
                .isEqualTo(ExitCode.PASS);
        Path record = onlyRecordFile(records);

        assertThat(run("--record", record.toString())).as(bench.err()).isEqualTo(ExitCode.PASS);
        assertThat(words())
                .contains("PASS, serial not given: flow at 100 %")
                .contains("(k = 2); wanted is +15 %")
                .contains("ENOUGH, with the spare that is wanted.");
    }

    @Test
    void metricUnitsAreReadAndPrinted() {
        assertThat(bench.run(
                        "demand",
                        "--units",
                        "metric",
                        "--rows",
                        "16",
                        "--spacing",
                        "76.2",
                        "--rate",
                        "46.77",
                        "--speed",
                        "8.85"))
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.out())
                .contains("16 rows of 76.2 cm, 46.8 L/ha, 8.85 km/h")
                .contains("0.526 L/min");
    }

    @Test
    void jsonIsOneObjectInSiUnits() {
        assertThat(run("--json", "--k", "3000", "--meter-rows", "1", "--available-gpm", "3"))
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.out().strip())
                .startsWith("{\"rows\":16,\"row_m3_per_second\":")
                .contains("\"pulses_per_second\":6.94")
                .endsWith("\"finding\":\"enough\"}");
    }

    @Test
    void wrongUseIsTold() {
        assertThat(bench.run("demand", "--rows", "16", "--spacing", "30", "--rate", "5,5", "--speed", "5"))
                .isEqualTo(ExitCode.USAGE);
        assertThat(bench.err())
                .contains("--rate is '5,5': write decimals with a point and no thousands sign, as in 5.5");
        assertThat(run("--product", "milk")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err())
                .contains("there is no product 'milk'. Known are: app-10-34-0, app-11-37-0, ats-12-0-0-26, np-7-21-7,"
                        + " uan-28, uan-32, water. For another, weigh a gallon of it and give --density-lb-gal.");
        assertThat(run("--meter-rows", "17", "--k", "3000")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("--meter-rows is 17, allowed are 1 to 16 (--rows)");
    }

    @Test
    void everyShippedFluidCanBeRead() throws Exception {
        try (Stream<Path> files = Files.list(Firmware.root().resolve("fixtures/fluids"))) {
            List<Path> fluids = files.toList();
            assertThat(fluids).hasSizeGreaterThan(5);
            for (Path file : fluids) {
                assertThat(file.getFileName()).hasToString(FluidFile.read(file).id() + ".yaml");
            }
        }
    }

    /** What was printed, without its line breaks. */
    private String words() {
        return bench.out().replaceAll("\\s+", " ");
    }

    private int run(String... more) {
        return bench.run(Stream.concat(Stream.of(SIXTEEN_ROWS), Stream.of(more)).toArray(String[]::new));
    }

    private static Path onlyRecordFile(Path records) throws IOException {
        try (Stream<Path> files = Files.walk(records)) {
            return files.filter(file -> file.endsWith("record.json"))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
