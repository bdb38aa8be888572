package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.curve.Basis;
import org.pumpwright.host.curve.CurveFile;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.Interpolation;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.WireTiming;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

final class CurveCommandsTest {
    private static final int UNITS = 3;

    @TempDir
    private static Path shared;

    private static Path records;

    @TempDir
    private Path folder;

    private final CommandLineBench bench = new CommandLineBench();

    @BeforeAll
    static void runKnownGoodUnitsTwice() {
        records = shared.resolve("records");
        for (int unit = 1; unit <= UNITS; unit++) {
            for (int run = 1; run <= 2; run++) {
                practice(unit, run, "G" + unit, records.resolve(unit + "-" + run));
            }
        }
    }

    @Test
    void aCurveIsBuiltFromTheRecordsOfKnownGoodUnits() throws Exception {
        Path out = folder.resolve("curve.yaml");
        assertThat(build(records, out, "G1", "G2", "G3")).as(bench.err()).isEqualTo(ExitCode.PASS);
        HealthyCurve curve = CurveFile.read(out);
        assertThat(curve.label()).isEqualTo("demo-pump v1");
        assertThat(curve.simulated()).isTrue();
        assertThat(curve.units()).isEqualTo(UNITS);
        assertThat(curve.interpolation()).isEqualTo(Interpolation.MONOTONE);
        assertThat(curve.provisional()).isTrue();
        assertThat(curve.author()).isEqualTo("A. First");
        assertThat(curve.made()).isEqualTo("2026-03-02");
        Basis basis = curve.basis().orElseThrow();
        assertThat(basis.runs()).isEqualTo(2 * UNITS);
        assertThat(basis.plan()).startsWith("quick-12v-pump v");
        assertThat(basis.knownGoodBy()).isEqualTo("C. Third");
        assertThat(basis.firstRun()).hasToString("2026-03-02");
        assertThat(basis.jointFeatures()).isEqualTo(18);
        assertThat(curve.points())
                .allSatisfy(point ->
                        assertThat(point.flowParts().orElseThrow().runSpread()).isLessThan(0.1));
        assertThat(bench.out())
                .contains("! 3 of 3 units had all their runs on one day")
                .contains("! provisional: 3 units stand behind it, and with fewer than 5 it only advises")
                .contains("! until another person approves it, it only advises");
    }

    @Test
    void aUnitThatNobodyDeclaredGoodIsRefused() {
        Path out = folder.resolve("curve.yaml");
        assertThat(build(records, out, "G1", "G2")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err())
                .contains("no curve was made:")
                .contains("unit G3 is not declared good; a unit that only passed here is not known to be good");
        assertThat(out).doesNotExist();
    }

    @Test
    void aRunWithoutASerialIsRefused() {
        practice(9, 1, "not given", folder.resolve("nameless"));
        assertThat(build(folder.resolve("nameless"), folder.resolve("curve.yaml"), "G1"))
                .isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("has no serial number, so its unit can't be told from others");
    }

    @Test
    void twoUnitsAreTooFew() {
        Path two = folder.resolve("curve.yaml");
        assertThat(build(records.resolve("1-1"), two, "G1")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err())
                .contains("no curve was made: a healthy curve needs at least 3 known-good units, there are 1.");
    }

    @Test
    void anExistingFileIsNotOverwritten() throws Exception {
        Path out = Files.writeString(folder.resolve("curve.yaml"), "an older version");
        assertThat(build(records, out, "G1", "G2", "G3")).isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("is already there. A new version is a new file");
        assertThat(out).hasContent("an older version");
    }

    @Test
    void anotherPersonThanTheAuthorApproves() throws Exception {
        Path out = folder.resolve("curve.yaml");
        build(records, out, "G1", "G2", "G3");
        assertThat(bench.run("curve", "approve", out.toString(), "--by", "a. FIRST"))
                .isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("a. FIRST made demo-pump v1 and can't approve it. Another person must.");
        assertThat(bench.run("curve", "approve", out.toString(), "--by", "B. Second"))
                .isEqualTo(ExitCode.PASS);
        assertThat(CurveFile.read(out).approval().orElseThrow().by()).isEqualTo("B. Second");
        assertThat(bench.run("curve", "approve", out.toString(), "--by", "C. Third"))
                .isEqualTo(ExitCode.USAGE);
        assertThat(bench.err()).contains("demo-pump v1 was approved by B. Second on 2026-03-02 already.");
    }

    @Test
    void aNewVersionTakesOverTheNameAndCountsUp() throws Exception {
        Path first = folder.resolve("first.yaml");
        build(records, first, "G1", "G2", "G3");
        Path second = folder.resolve("second.yaml");
        List<String> more = new ArrayList<>(words(records, second, "G1", "G2", "G3"));
        more.addAll(List.of("--replaces", first.toString()));
        assertThat(bench.run(more.toArray(String[]::new))).as(bench.err()).isEqualTo(ExitCode.PASS);
        assertThat(CurveFile.read(second).label()).isEqualTo("demo-pump v2");
    }

    @Test
    void aCurveIsShownWithinEightyColumnsAndDrawn() throws Exception {
        Path svg = folder.resolve("curve.svg");
        String demo = Firmware.root().resolve("fixtures/curves/demo-pump.yaml").toString();
        assertThat(bench.run("curve", "show", demo, "--svg", svg.toString()))
                .as(bench.err())
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.out().lines().filter(line -> !line.startsWith("Drawn to")))
                .allSatisfy(line -> assertThat(line).hasSizeLessThan(80));
        assertThat(bench.out())
                .contains("flow, gal/min   (o points, * mean, . limits)")
                .contains("motor amps, A")
                .contains("approved          not recorded");
        var picture = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(svg.toFile());
        assertThat(picture.getElementsByTagName("polygon").getLength()).isEqualTo(2);
        assertThat(picture.getElementsByTagName("circle").getLength())
                .isEqualTo(2 * CurveFile.read(Path.of(demo)).points().size());
    }

    @Test
    void otherProgramsGetTheCurveAsOneLine() throws Exception {
        Path out = folder.resolve("curve.yaml");
        List<String> words = new ArrayList<>(words(records, out, "G1", "G2", "G3"));
        words.add("--json");
        assertThat(bench.run(words.toArray(String[]::new))).as(bench.err()).isEqualTo(ExitCode.PASS);
        assertThat(bench.run("curve", "approve", out.toString(), "--by", "B. Second", "--json"))
                .isEqualTo(ExitCode.PASS);
        assertThat(bench.run("curve", "show", out.toString(), "--json")).isEqualTo(ExitCode.PASS);
        JsonMapper json = JsonMapper.builder().build();
        List<JsonNode> lines = bench.out().lines().map(json::readTree).toList();
        assertThat(lines)
                .extracting(line -> line.get("event").stringValue())
                .containsExactly("built", "approved", "curve");
        assertThat(lines.get(0).get("notes").size()).isEqualTo(3);
        assertThat(lines.get(0).get("file").stringValue()).isEqualTo(out.toString());
        assertThat(lines.get(1).get("approval").get("by").stringValue()).isEqualTo("B. Second");
        JsonNode shown = lines.get(2);
        assertThat(shown.get("label").stringValue()).isEqualTo("demo-pump v1");
        assertThat(shown.get("basis").get("run_ids").size()).isEqualTo(2 * UNITS);
        assertThat(shown.get("points").size()).isEqualTo(9);
        JsonNode point = shown.get("points").get(8);
        assertThat(point.get("flow_m3_per_second").doubleValue())
                .isBetween(
                        point.get("flow_low_m3_per_second").doubleValue(),
                        point.get("flow_high_m3_per_second").doubleValue());
    }

    @Test
    void aRunThatStandsBehindTheCurveSaysSoWhenItIsGradedByIt() throws Exception {
        Path out = folder.resolve("curve.yaml");
        build(records, out, "G1", "G2", "G3");
        CommandLineBench grading = new CommandLineBench();
        grading.run("grade", records.toString(), "--curve", out.toString(), "--dry-run");
        assertThat(grading.out().replaceAll("\\s+", " "))
                .contains("is one of the runs that curve demo-pump v1 was made from: this verdict proves nothing")
                .contains("6 of the runs that the curve was made from: their verdicts prove nothing.");
    }

    @Test
    void theFirstCurveIsMadeOfRunsByAPlanThatNeedsNone() throws Exception {
        Path home = folder.resolve("home");
        Path without = Firmware.root().resolve("fixtures");
        for (String name : List.of("models", "plans", "stands")) {
            try (Stream<Path> files = Files.list(without.resolve(name))) {
                for (Path file : files.toList()) {
                    Path target = home.resolve("fixtures")
                            .resolve(name)
                            .resolve(file.getFileName().toString());
                    Files.createDirectories(target.getParent());
                    Files.copy(file, target);
                }
            }
        }
        Path first = folder.resolve("first");
        for (int unit = 1; unit <= UNITS; unit++) {
            practice(home, unit, 1, "G" + unit, first, "--plan", "first-curve-12v-pump");
        }
        Path out = folder.resolve("curve.yaml");
        assertThat(build(first, out, "G1", "G2", "G3")).as(bench.err()).isEqualTo(ExitCode.PASS);
        assertThat(CurveFile.read(out).basis().orElseThrow().plan()).isEqualTo("first-curve-12v-pump v1");
    }

    private int build(Path from, Path out, String... good) {
        return bench.run(words(from, out, good).toArray(String[]::new));
    }

    private List<String> words(Path from, Path out, String... good) {
        StringBuilder list =
                new StringBuilder("declared_by: \"C. Third\"\ndeclared_on: \"2026-01-05\"\nmodel: demo-pump\nunits:\n");
        for (String serial : good) {
            list.append("  - { serial: \"%s\", because: \"simulated as healthy\" }%n".formatted(serial));
        }
        try {
            Path file = Files.writeString(folder.resolve("good.yaml"), list);
            return List.of(
                    "curve",
                    "build",
                    from.toString(),
                    "--model",
                    "demo-pump",
                    "--known-good",
                    file.toString(),
                    "--author",
                    "A. First",
                    "--out",
                    out.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void practice(int seed, int run, String serial, Path where) {
        practice(Firmware.root(), seed, run, serial, where);
    }

    private static void practice(Path home, int seed, int run, String serial, Path where, String... more) {
        // Records are told apart by the time of their run.
        Clock later = Clock.offset(CommandLineBench.CLOCK, Duration.ofMinutes(10L * (2 * seed + run)));
        Workshop workshop = new Workshop(
                home,
                where,
                later,
                new Stands(WireTiming.STANDARD, SerialPorts::open),
                Reader.nullReader(),
                false,
                CommandLineBench.environment(Firmware.root()));
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        List<String> words = new ArrayList<>(List.of(
                "practice",
                "--fault",
                "healthy",
                "--seed",
                Integer.toString(seed),
                "--serial",
                serial,
                "--quiet",
                "--records",
                where.toString()));
        words.addAll(List.of(more));
        Main.run(workshop, nowhere, nowhere, words.toArray(String[]::new));
    }
}
