package org.pumpwright.host.cli.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.cli.CommandLineBench;
import org.pumpwright.host.record.ledger.Digest;

/** The desk through its commands; every unit and every name here is invented. */
class ClaimCommandTest {
    /** One black dot. */
    private static final byte[] DOT = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    private static final String SHEET =
            Firmware.root().resolve("fixtures/claims/example-sheet.yaml").toString();

    @TempDir
    private Path folder;

    private String err = "";

    private String run(int expected, String... arguments) {
        CommandLineBench bench = new CommandLineBench();
        List<String> all = new ArrayList<>(List.of(arguments));
        all.add("--records");
        all.add(folder.resolve("records").toString());
        int code = bench.run(all.toArray(String[]::new));
        err = bench.err();
        assertThat(code).as(bench.err() + bench.out()).isEqualTo(expected);
        return bench.out();
    }

    private String claim(int expected, String... arguments) {
        List<String> all = new ArrayList<>(List.of("claim"));
        all.addAll(List.of(arguments));
        return run(expected, all.toArray(String[]::new));
    }

    private String accept(int expected, String serial, String... more) {
        List<String> all = new ArrayList<>(List.of(
                "accept",
                "--stand",
                "simulated",
                "--model",
                "demo-pump",
                "--serial",
                serial,
                "--claim",
                "EX-1001",
                "--technician",
                "Terry Tester",
                "--quiet"));
        all.addAll(List.of(more));
        return run(expected, all.toArray(String[]::new));
    }

    @Test
    void aClaimGoesFromTheDoorToThePacket() throws Exception {
        assertThat(claim(0, "open", "--sheet", SHEET))
                .contains("Claim EX-1001 is open.", "CAUTION", "calcium-nitrate", "The intake is whole.");
        claim(2, "open", "--sheet", SHEET);
        assertThat(err).contains("claim EX-1001 is open already");

        accept(2, "DP-2512-0417");
        assertThat(err).contains("nobody has confirmed that the unit of claim EX-1001 is clean");
        claim(0, "note", "EX-1001", "--rinsed-by", "Terry Tester", "--rinses", "2");
        accept(2, "DP-2512-9999");
        assertThat(err).contains("the serial of this unit is 'DP-2512-9999'", "it was 'DP-2512-0417'");
        claim(2, "move", "EX-1001", "tested", "--by", "Terry Tester", "--place", "stand");
        assertThat(err).contains("no run with this claim number is on record");
        claim(
                2,
                "finding",
                "EX-1001",
                "--category",
                "C1",
                "--reproduced",
                "yes",
                "--basis",
                "flow",
                "--by",
                "Terry Tester");
        assertThat(err).contains("no run on record found that", "Runs on record: none");

        assertThat(accept(1, "DP-2512-0417", "--fault", "slip:severe", "--seed", "3"))
                .contains("full-12v-pump");
        assertThat(claim(
                        0,
                        "move",
                        "EX-1001",
                        "tested",
                        "--by",
                        "Terry Tester",
                        "--place",
                        "stand 1",
                        "--colour",
                        "red"))
                .contains(
                        "Claim EX-1001 is tested",
                        "Tag: red (hold for the claim)",
                        "From there: quarantined, awaiting-decision.");
        assertThat(claim(
                        0,
                        "finding",
                        "EX-1001",
                        "--category",
                        "C2",
                        "--reproduced",
                        "yes",
                        "--basis",
                        "flow low at every point",
                        "--part",
                        "valve plate",
                        "--by",
                        "Terry Tester"))
                .contains(
                        "C2  Outside limits; condition consistent with normal wear for reported use",
                        "Reproduced: yes");
        claim(
                2,
                "finding",
                "EX-1001",
                "--category",
                "C8",
                "--reproduced",
                "yes",
                "--basis",
                "x",
                "--by",
                "Terry Tester");
        assertThat(err).contains("has a finding already", "--corrects TEXT");

        claim(2, "decide", "EX-1001", "approve", "--reason", "worn early", "--by", "Kim Clerk");
        assertThat(err).contains("missing is photo-plate, photo-connector, photo-whole", "example-shop v3");
        for (String shows : List.of("plate", "connector", "whole")) {
            Path picture = folder.resolve(shows + ".png");
            Files.write(picture, DOT);
            assertThat(claim(0, "photo", "EX-1001", picture.toString(), "--shows", shows, "--by", "Robin Example"))
                    .contains("by the time of the file");
        }
        claim(2, "decide", "EX-1001", "approve", "--reason", "worn early", "--by", "terry tester");
        assertThat(err).contains("Who measures does not decide");
        assertThat(claim(0, "decide", "EX-1001", "approve", "--reason", "worn early", "--by", "Kim Clerk"))
                .contains("Claim EX-1001: Approved. Signed: Kim Clerk.", "Rules: example-shop v3, invented example");

        assertThat(claim(0, "show", "EX-1001"))
                .contains(
                        "CLAIM EX-1001   TESTED",
                        "PRACTICE",
                        "Example Acres (invented)",
                        "photo of the ports",
                        "Within the period",
                        "[coverage/example-2026.yaml:",
                        "Terry Tester");
        packet();
    }

    private void packet() throws Exception {
        Path zip = folder.resolve("one.zip");
        Path again = folder.resolve("two.zip");
        claim(0, "packet", "EX-1001", "--out", zip.toString());
        claim(0, "packet", "EX-1001", "--out", again.toString());
        assertThat(Files.readAllBytes(zip)).isEqualTo(Files.readAllBytes(again));
        Map<String, byte[]> files = unpacked(zip);
        assertThat(files.keySet())
                .contains("README.txt", "MANIFEST.sha256", "summary.csv", "papers/claim.txt")
                .contains("papers/clerk.pdf")
                .anyMatch(name -> name.endsWith("technician.pdf"))
                .anyMatch(name -> name.endsWith("factory.pdf"))
                .noneMatch(name -> name.endsWith("customer.pdf"))
                .noneMatch(name -> name.endsWith(".html"))
                .anyMatch(name -> name.endsWith("trace.csv"))
                .anyMatch(name -> name.endsWith("trace.bin"))
                .anyMatch(name -> name.startsWith("photos/plate-"));
        for (String line : text(files, "MANIFEST.sha256").lines().toList()) {
            assertThat(Digest.of(files.get(line.substring(66))).hex()).isEqualTo(line.substring(0, 64));
        }
        assertThat(text(files, "MANIFEST.sha256").lines()).hasSize(files.size() - 1);
        files.forEach((name, bytes) -> assertThat(new String(bytes, StandardCharsets.UTF_8))
                .as(name)
                .doesNotContain("Example Acres", "555-0100", "Sam Example"));
        claim(0, "packet", "EX-1001", "--out", zip.toString(), "--with-customer");
        Map<String, byte[]> withPeople = unpacked(zip);
        assertThat(text(withPeople, "identity.json")).contains("Example Acres (invented)", "555-0100");
        assertThat(withPeople.keySet()).anyMatch(name -> name.endsWith("customer.pdf"));
    }

    private static String text(Map<String, byte[]> files, String name) {
        return new String(files.get(name), StandardCharsets.UTF_8);
    }

    private static Map<String, byte[]> unpacked(Path zip) throws Exception {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(zip)))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        }
        return files;
    }

    @Test
    void aUnitWithoutAWholeIntakeStaysOffTheStand() {
        assertThat(claim(0, "open", "--number", "EX-1001", "--model", "demo-pump", "--serial", "no plate"))
                .contains(
                        "Before the unit can be tested, add: brought-by, contact, kind, accessories, seal, tag, complaint, complaint-code, product, decontamination-declared.");
        accept(2, "no plate");
        assertThat(err).contains("its intake lacks: brought-by", "product");
        claim(2, "open", "--number", "EX-2", "--hours", "120");
        assertThat(err).contains("write 120:document, :customer or :unknown");
    }

    @Test
    void aCorrectionKeepsBothVersions() throws Exception {
        claim(0, "open", "--sheet", SHEET);
        Path sheet = folder.resolve("right.yaml");
        Files.writeString(sheet, Files.readString(Path.of(SHEET)).replace("DP-2512-0417", "DP-2512-0471"));
        assertThat(claim(0, "open", "--sheet", sheet.toString(), "--corrects", "serial misread"))
                .contains("Claim EX-1001 is corrected.");
        assertThat(claim(0, "show", "EX-1001"))
                .contains("serial       DP-2512-0471", "serial misread", "unit serial: DP-2512-0417 -> DP-2512-0471");
    }

    @Test
    void aBypassOfTheRinseIsOnRecordAndPrinted() {
        claim(0, "open", "--sheet", SHEET);
        claim(2, "note", "EX-1001", "--bypass-decontamination", "Kim Clerk");
        assertThat(err).contains("belong together");
        accept(2, "DP-2512-0417", "--bypass-decontamination", "Kim Clerk");
        assertThat(err).contains("--bypass-decontamination and --reason belong together");
        assertThat(accept(
                        0,
                        "DP-2512-0417",
                        "--bypass-decontamination",
                        "Kim Clerk",
                        "--reason",
                        "never filled",
                        "--seed",
                        "5"))
                .contains("not confirmed clean; Kim Clerk answers for it: never filled");
        assertThat(claim(0, "show", "EX-1001"))
                .contains("Tested without confirmed decontamination: Kim Clerk, never filled");
    }

    @Test
    void openClaimsAreListedByState() {
        claim(0, "open", "--sheet", SHEET);
        assertThat(claim(0, "list"))
                .contains("received (1)", "EX-1001        0 days, 0 here  demo-pump DP-2512-0417  low");
        assertThat(claim(0, "list", "--json")).contains("\"claim\":\"EX-1001\"", "\"state\":\"received\"");
        claim(0, "move", "EX-1001", "returned", "--by", "Kim Clerk", "--place", "door");
        assertThat(claim(0, "list")).contains("No claims are open.");
        assertThat(claim(0, "list", "--all")).contains("returned (1)");
        claim(2, "move", "EX-1001", "tested", "--by", "Kim Clerk", "--place", "x");
        assertThat(err).contains("what comes again is a new claim");
    }

    @Test
    void aWrongSheetIsToldWithItsLine() throws Exception {
        Path sheet = folder.resolve("new.yaml");
        CommandLineBench bench = new CommandLineBench();
        assertThat(bench.run("claim", "new-sheet", sheet.toString())).isZero();
        Files.writeString(sheet, Files.readString(sheet).replace("complaint_code: \"\"", "complaint_code: slow"));
        claim(2, "open", "--sheet", sheet.toString());
        assertThat(err)
                .contains("new.yaml:5: claim is empty, allowed is a number of the claim or job, such as C-1001")
                .contains("new.yaml:32: complaint_code is \"slow\", allowed is no-flow, low, surging");
    }
}
