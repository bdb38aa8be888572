package org.pumpwright.host.cli.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.claim.ClaimToCount;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the terminal and other programs are told of returns. */
final class StatisticsCommandTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-31T18:00:00Z"), ZoneOffset.ofHours(-6));

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(List<ClaimFile> claims, String... arguments) {
        return new CommandLine(new StatisticsCommand(CLOCK, store -> claims))
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }

    /** The page with its lines joined up again. */
    private String page() {
        return out.toString().replaceAll("\\s+", " ");
    }

    /** Sold in January: diaphragms at 3 to 9 months, two leaks, one unit of the rest without a fault, one open. */
    private static List<ClaimFile> year() {
        List<ClaimFile> claims = new ArrayList<>();
        for (int month = 4; month <= 10; month++) {
            claims.add(ClaimToCount.cameIn("D" + month, "2026-%02d-10".formatted(month))
                    .unit("pump", "D" + month, "2603")
                    .sold("2026-01-15")
                    .found(Category.C2, "diaphragm")
                    .returned("2026-%02d-14".formatted(month))
                    .file());
        }
        claims.add(failed("L1", "2607", "2026-03-01"));
        claims.add(failed("L2", "2607", "2026-03-20"));
        claims.add(ClaimToCount.cameIn("N1", "2026-05-01")
                .unit("pump", "N1", "2607")
                .found(Category.C4)
                .file());
        claims.add(ClaimToCount.cameIn("O1", "2026-11-11")
                .unit("pump", "O1", "2607")
                .file());
        return claims;
    }

    private static ClaimFile failed(String number, String code, String day) {
        return ClaimToCount.cameIn(number, day)
                .unit("pump", number, code)
                .found(Category.C1, "leak")
                .file();
    }

    private String shipped() throws IOException {
        return Files.write(
                        folder.resolve("shipped.csv"),
                        List.of("month,count,date_code", "2026-01,120,2603", "2026-02,2000,2607"))
                .toString();
    }

    @Test
    void everyRateComesWithItsInterval() {
        int code = run(year());

        assertThat(code).isZero();
        assertThat(page())
                .contains("Returns of all models together, until 2026-12-31. Intervals: 95 %.")
                .contains("Came in 11, of these 10 concluded and 1 open")
                .contains("Confirmed 9 of 10 concluded are outside limits: 90 % (60 to 98 %)")
                .contains("No fault found 1 of 10 concluded: 10 % (1.8 to 40 %).")
                .contains("Failure diaphragm, 7 of 9 confirmed: 78 % (45 to 94 %)")
                .contains("Repeats 0 of 7 handed back came again within 30 days: 0 % (0 to 35 %)")
                .contains("Turnaround half took 4 days or less; 4 to 4 (7 units)")
                .contains("Work minutes are not kept with these claims")
                .contains("Open claims 1, the oldest 50 days")
                .contains("Lives, batches not worked out: that needs what was shipped (--shipped)");
    }

    @Test
    void livesOfAModeAreGivenOrCalledTooFew() throws IOException {
        run(year(), "--model", "pump", "--shipped", shipped());

        assertThat(page())
                .contains("2603 120 shipped in 2026-01; month 3: 1 (1); month 4: 1 (1)")
                .contains("113 still serve")
                .contains("Together 9 of 2120 shipped have failed so far: 0.4 % (0.2 to 0.8 %)")
                .contains("Life diaphragm: 7 failures, 2113 suspensions shape ")
                .contains("months watched: nobody has seen it")
                .contains("Life leak: 2 failures, 2118 suspensions too few: 2 failures of this mode, 5 are needed for"
                        + " a Weibull fit months at failure: 1, 1");
    }

    @Test
    void aBatchThatComesBackTooOftenIsAnAlertAmongSoManyLookedAt() throws IOException {
        run(year(), "--model", "pump", "--shipped", shipped());

        assertThat(page())
                .contains("Batches 2 looked at; at 2.0 % chance alone gives up to 0.04 false alerts")
                .contains(
                        "ALERT 2603: 7 of 120 failed, 0.12 expected by the rest at the same ages; by chance less than once"
                                + " in 1000. Look for a common cause");
    }

    @Test
    void noLineIsWiderThanATerminalAndFurtherLinesAreSetIn() throws IOException {
        run(year(), "--model", "pump", "--shipped", shipped());

        assertThat(out.toString().lines())
                .allMatch(line -> line.length() <= 79)
                .contains(" ".repeat(16) + "months at failure: 1, 1");
    }

    @Test
    void anotherProgramGetsTheSameWithIntervals() throws IOException {
        run(year(), "--model", "pump", "--shipped", shipped(), "--json");
        JsonNode json = JsonMapper.builder().build().readTree(out.toString());

        assertThat(json.at("/returns/no_fault_found_share/of").asInt()).isEqualTo(10);
        assertThat(json.at("/returns/no_fault_found_share/interval").size()).isEqualTo(2);
        assertThat(json.at("/fleet/lives/0/mode").asString()).isEqualTo("diaphragm");
        assertThat(json.at("/fleet/lives/0/beta_interval/0").asDouble())
                .isLessThan(json.at("/fleet/lives/0/beta").asDouble());
        assertThat(json.at("/fleet/lives/1/not_fitted").asString()).startsWith("too few: 2 failures");
        assertThat(json.at("/fleet/batches/looked_at").asInt()).isEqualTo(2);
        assertThat(json.at("/fleet/batches/findings/0/alert").asBoolean()).isTrue();
    }

    @Test
    void noCustomerIsNamed() throws IOException {
        run(year(), "--model", "pump", "--shipped", shipped(), "--json");
        run(year(), "--model", "pump", "--shipped", shipped());

        assertThat(out.toString()).doesNotContain("Customer", "Clerk", "Technician");
    }

    @Test
    void nothingOnRecordIsSaidAsNothing() {
        run(List.of(), "--practice");

        assertThat(page())
                .startsWith("PRACTICE - simulated or invented units")
                .contains("Came in 0, of these 0 concluded and 0 open")
                .doesNotContain("NaN");
    }

    @Test
    void anAlertSettingThatIsNoPercentageIsWrongUse() {
        assertThat(run(List.of(), "--alert-percent", "0")).isEqualTo(2);
        assertThat(err.toString()).contains("--alert-percent is 0.0, must lie between 0 and 100");
    }
}
