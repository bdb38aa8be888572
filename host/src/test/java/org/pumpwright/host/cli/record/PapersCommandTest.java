package org.pumpwright.host.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.cli.CommandLineBench;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.report.pdf.Conformance;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** From the test of a unit to its papers, through the commands; every unit and every name here is invented. */
class PapersCommandTest {
    private static final String SERIAL = "DP-2512-0417";
    private static final byte[] DOT = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    @TempDir
    private static Path shop;

    private static String failed = "";
    private static String passed = "";
    private static String invalid = "";
    private static int minutes;
    private static String err = "";

    @TempDir
    private Path folder;

    private static String run(int expected, String... words) {
        CommandLineBench bench = new CommandLineBench(
                Clock.offset(CommandLineBench.CLOCK, Duration.ofMinutes(minutes)),
                shop.resolve("spare"),
                Map.of("PUMPWRIGHT_KEYS", shop.resolve("keys").toString()));
        minutes += 10;
        List<String> all = new ArrayList<>(List.of(words));
        all.add("--records");
        all.add(shop.resolve("records").toString());
        int code = bench.run(all.toArray(String[]::new));
        err = bench.err();
        assertThat(code).as(bench.err() + bench.out()).isEqualTo(expected);
        return bench.out();
    }

    /** The number of the run. */
    private static String accept(int expected, String... more) {
        List<String> words = new ArrayList<>(List.of("accept", "--stand", "simulated", "--model", "demo-pump"));
        words.addAll(List.of("--technician", "Terry Tester", "--quiet"));
        words.addAll(List.of(more));
        String out = run(expected, words.toArray(String[]::new));
        return out.lines()
                .filter(line -> line.startsWith("Record "))
                .findFirst()
                .orElseThrow(() -> new AssertionError(out))
                .replaceFirst("Record +", "")
                .split("[ ,]")[0]
                .replaceAll(".*/(?=[^/]+/)", "")
                .replaceAll("/record.json.*", "");
    }

    /** A claim with a photo, a unit that failed for it and passed after a repair, and a run that does not count. */
    @BeforeAll
    static void aDayInTheShop() throws Exception {
        String sheet =
                Firmware.root().resolve("fixtures/claims/example-sheet.yaml").toString();
        run(0, "claim", "open", "--sheet", sheet);
        run(0, "claim", "note", "EX-1001", "--rinsed-by", "Terry Tester", "--rinses", "2");
        failed = accept(1, "--serial", SERIAL, "--claim", "EX-1001", "--fault", "slip:severe", "--seed", "3");
        passed = accept(0, "--serial", SERIAL, "--claim", "EX-1001", "--fault", "healthy", "--seed", "5");
        invalid = accept(3, "--serial", "SN-9", "--fault", "low-supply:severe");
        Path picture = shop.resolve("plate.png");
        Files.write(picture, DOT);
        run(0, "claim", "photo", "EX-1001", picture.toString(), "--shows", "plate", "--by", "Robin Example");
        run(
                0,
                "bucket",
                "--typed",
                Firmware.root().resolve("fixtures/buckets/weighed-example.yaml").toString());
    }

    private byte[] paper(String id, String page, String... more) throws Exception {
        Path file = folder.resolve(page + ".pdf");
        List<String> words = new ArrayList<>(List.of("record", "papers", id, "--page", page, "--out", file.toString()));
        words.addAll(List.of(more));
        assertThat(run(0, words.toArray(String[]::new))).contains("Made: " + file);
        return Files.readAllBytes(file);
    }

    private static String shown(String id) {
        List<String> words = new ArrayList<>(List.of("record", "show", id, "--json"));
        return run(0, words.toArray(String[]::new));
    }

    private static Map<String, byte[]> within(byte[] pdf) throws Exception {
        Map<String, byte[]> files = new TreeMap<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Map<String, PDComplexFileSpecification> names =
                    document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
            for (Map.Entry<String, PDComplexFileSpecification> each : names.entrySet()) {
                files.put(each.getKey(), each.getValue().getEmbeddedFile().toByteArray());
            }
        }
        return files;
    }

    private static String words(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static String firstSheet(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setEndPage(1);
            return stripper.getText(document);
        }
    }

    private static int sheets(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void everyPageOfARunIsOneSheetThatIsMadeToBeKept(String language) throws Exception {
        for (String page : List.of("technician", "customer", "clerk", "factory", "label")) {
            for (String paper : page.equals("label") ? List.of("label", "a4") : List.of("letter", "a4")) {
                byte[] pdf = paper(failed, page, "--language", language, "--paper", paper);
                assertThat(Conformance.failures(pdf)).as(page).isEmpty();
                // What a technician acts on and signs is one sheet; the figures behind it follow.
                assertThat(sheets(pdf))
                        .as(page + " on " + paper)
                        .isLessThanOrEqualTo(page.equals("technician") ? 3 : 1);
                if (page.equals("technician")) {
                    assertThat(firstSheet(pdf))
                            .as(paper)
                            .contains(Texts.in(Language.valueOf(language.toUpperCase(Locale.ROOT)))
                                    .say("technician.sign.decision"));
                }
                assertThat(words(pdf)).as(page).contains(SERIAL, said(page, language.equals("en")));
            }
        }
        byte[] retest = paper(passed, "retest", "--with", failed, "--language", language);
        assertThat(Conformance.failures(retest)).isEmpty();
        assertThat(sheets(retest)).isEqualTo(1);
        assertThat(words(retest)).contains(failed, passed);
    }

    /** The customer is told in a sentence. */
    private static String said(String page, boolean english) {
        if (page.equals("customer")) {
            return english
                    ? "It does not work as it should."
                    : Texts.in(Language.ES).say("customer.fail");
        }
        return english ? "FAIL" : "NO APROBADO";
    }

    @Test
    void theRecordWithinIsTheOneThatWasSigned() throws Exception {
        for (String page : List.of("technician", "customer", "clerk", "label")) {
            Map<String, byte[]> files = within(paper(failed, page));
            assertThat(files.keySet()).containsExactly("entry.json", "entry.sig", "record.json");
            assertThat(text(files.get("record.json"))).isEqualTo(shown(failed));
            assertThat(text(files.get("entry.json")))
                    .contains("\"content_sha256\":\""
                            + Digest.of(files.get("record.json")).hex() + "\"");
            assertThat(files.get("entry.sig")).hasSize(64);
        }
        Map<String, byte[]> both = within(paper(failed, "retest", "--with", passed));
        assertThat(text(both.get("record.json"))).isEqualTo(shown(passed));
        assertThat(text(both.get("before-record.json"))).isEqualTo(shown(failed));
    }

    @Test
    void nobodysNameIsWithinAFactorysPage() throws Exception {
        byte[] pdf = paper(failed, "factory");
        Map<String, byte[]> files = within(pdf);
        assertThat(files.keySet()).containsExactly("entry.json", "entry.sig", "record-without-names.json");
        assertThat(text(files.get("record-without-names.json")))
                .contains(SERIAL)
                .doesNotContain("Terry Tester");
        assertThat(words(pdf))
                .contains(Digest.of(shown(failed).getBytes(StandardCharsets.UTF_8))
                        .hex());
    }

    @Test
    void theShopAndTheClaimStandOnThePages() throws Exception {
        assertThat(words(paper(failed, "clerk")))
                .contains("Pumpwright Practice Shop (invented)", "EX-1001", "drops off at the end rows");
        assertThat(words(paper(failed, "customer")))
                .contains("Pumpwright Practice Shop (invented)", "drops off at the end rows");
    }

    @Test
    void anInvalidRunGetsATicketOnly() throws Exception {
        for (String page : List.of("customer", "label")) {
            run(2, "record", "papers", invalid, "--page", page, "--out", folder + "/none.pdf");
            assertThat(err).contains("is INVALID: it says nothing of the unit", "--page technician");
        }
        assertThat(folder.resolve("none.pdf")).doesNotExist();
        assertThat(words(paper(invalid, "technician"))).contains("INVALID");
    }

    @Test
    void aBucketTestHasItsReportAndItsLabel() throws Exception {
        String id = run(0, "record", "find", "--kind", "bucket-test")
                .lines()
                .filter(line -> line.contains("desk/"))
                .findFirst()
                .orElseThrow()
                .replaceFirst(".*desk/", "")
                .strip();
        for (String language : List.of("en", "es")) {
            for (String page : List.of("bucket", "label")) {
                byte[] pdf = paper(id, page, "--language", language);
                assertThat(Conformance.failures(pdf)).as(page).isEmpty();
                assertThat(text(within(pdf).get("record.json"))).isEqualTo(shown(id));
            }
        }
        run(2, "record", "papers", id, "--page", "customer");
        assertThat(err).contains("is a bucket test. Its papers are --page bucket and --page label.");
        run(2, "record", "papers", passed, "--page", "bucket");
        assertThat(err).contains("page bucket is made of a bucket test");
    }

    @Test
    void aBeginningIsEnoughWhenThereIsOneOnlyAndAFileWorksToo() throws Exception {
        assertThat(words(paper(failed.substring(0, failed.length() - 3), "technician")))
                .contains(failed);
        run(2, "record", "papers", failed.substring(0, 8), "--page", "technician");
        assertThat(err).contains("entries begin with " + failed.substring(0, 8), "Give more of it");
        run(2, "record", "papers", "nothing-like-it", "--page", "technician");
        assertThat(err).contains("there is no entry nothing-like-it on record");
        Path file = shop.resolve("records").resolve(failed).resolve("record.json");
        Map<String, byte[]> files = within(paper(file.toString(), "technician"));
        assertThat(files.keySet()).containsExactly("record.json");
        assertThat(text(files.get("record.json"))).isEqualTo(shown(failed));
    }

    @Test
    void aCorrectionIsToldWithBothVersions() throws Exception {
        String unit = accept(0, "--serial", "SN-1O4", "--fault", "healthy", "--seed", "5");
        run(
                0,
                "record",
                "amend",
                unit,
                "--serial",
                "SN-104",
                "--by",
                "A. Example",
                "--reason",
                "letter O on the plate");
        for (String page : List.of("technician", "customer")) {
            String words = words(paper(unit, page)).replaceAll("\\s+", " ");
            assertThat(words).as(page).contains("by A. Example: serial SN-104 (first written: SN-1O4)", "letter O on");
        }
        assertThat(words(paper(unit, "factory")).replaceAll("\\s+", " "))
                .contains("serial SN-104 (first written: SN-1O4)")
                .doesNotContain("A. Example", "letter O");
        assertThat(words(paper(unit, "label"))).contains("SN-104", "CORRECTED ON RECORD");
        assertThat(text(within(paper(unit, "technician")).get("record.json"))).contains("SN-1O4");
    }

    @Test
    void aRetestNeedsTwoRunsOfOneUnit() {
        run(2, "record", "papers", failed, "--page", "retest");
        assertThat(err).contains("Give the other one too: --with ID");
        run(2, "record", "papers", failed, "--page", "retest", "--with", invalid);
        assertThat(err).contains("a retest is of one unit");
    }

    @Test
    void thePageIsThereAsHtmlToo() throws Exception {
        Path file = folder.resolve("page.html");
        run(0, "record", "papers", failed, "--page", "technician", "--format", "html", "--out", file.toString());
        assertThat(Files.readString(file)).startsWith("<!DOCTYPE html>").contains(SERIAL);
    }
}
