package org.pumpwright.host.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.cli.CommandLineBench;
import org.pumpwright.host.record.sql.OwnPostgresql;

/** A claim from the door to the decision with everything in a server, and from there into another shop's file. */
@Timeout(300)
final class ServerTest {
    private static final String SHEET =
            Firmware.root().resolve("fixtures/claims/example-sheet.yaml").toString();

    @TempDir
    private Path folder;

    private Map<String, String> environment = Map.of();

    private String run(int expected, String shop, String... arguments) {
        CommandLineBench bench = new CommandLineBench(CommandLineBench.CLOCK, folder.resolve("spare"), environment);
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of("--records", folder.resolve(shop).toString()));
        assertThat(bench.run(all.toArray(String[]::new)))
                .as(bench.err() + bench.out())
                .isEqualTo(expected);
        return bench.out();
    }

    @Test
    void aClaimInAServerGoesIntoAnotherShopsFile() throws Exception {
        try (OwnPostgresql server = OwnPostgresql.start()) {
            Map<String, String> keys =
                    Map.of("PUMPWRIGHT_KEYS", folder.resolve("keys").toString());
            Map<String, String> inServer = new HashMap<>(keys);
            inServer.put("PUMPWRIGHT_STORE", server.address(server.newDatabase()) + "?user=" + OwnPostgresql.USER);
            environment = inServer;
            claim();

            assertThat(run(0, "shop", "record", "find", "--claim", "EX-1001", "--kind", "run"))
                    .contains("DP-2512-0417", "FAIL");
            assertThat(run(0, "shop", "record", "show", "claim/EX-1001/0001")).contains("Signature      holds");
            assertThat(run(0, "shop", "record", "audit")).contains("all as they were signed.");
            String lines = folder.resolve("all.jsonl").toString();
            run(0, "shop", "record", "export", "--json-lines", "--with-customer", "--out", lines);
            assertThat(folder.resolve("shop").resolve("ledger.db")).doesNotExist();

            String found = run(0, "shop", "record", "find", "--claim", "EX-1001");
            environment = Map.of("PUMPWRIGHT_KEYS", folder.resolve("other-keys").toString());
            run(0, "other", "record", "import", lines);
            assertThat(run(1, "other", "record", "audit")).contains("is signed with a key that is not trusted");
            handOverKeys();
            assertThat(run(0, "other", "record", "audit")).contains("all as they were signed.");
            assertThat(run(0, "other", "record", "find", "--claim", "EX-1001").lines())
                    .containsExactlyInAnyOrderElementsOf(found.lines().toList());
            assertThat(run(0, "other", "claim", "show", "EX-1001")).contains("Example Acres (invented)", "Kim Clerk");
        }
    }

    private void handOverKeys() throws Exception {
        Files.createDirectories(folder.resolve("other-keys"));
        for (String chain : List.of("desk", "simulated")) {
            Files.copy(
                    folder.resolve("keys").resolve(chain + ".pub"),
                    folder.resolve("other-keys").resolve("shop-" + chain + ".pub"));
        }
    }

    private void claim() {
        run(0, "shop", "claim", "open", "--sheet", SHEET);
        run(0, "shop", "claim", "note", "EX-1001", "--rinsed-by", "Terry Tester", "--rinses", "2");
        run(
                1,
                "shop",
                "accept",
                "--stand",
                "simulated",
                "--model",
                "demo-pump",
                "--serial",
                "DP-2512-0417",
                "--claim",
                "EX-1001",
                "--technician",
                "Terry Tester",
                "--quiet",
                "--fault",
                "slip:severe",
                "--seed",
                "3");
        run(
                0,
                "shop",
                "claim",
                "finding",
                "EX-1001",
                "--category",
                "C2",
                "--reproduced",
                "yes",
                "--basis",
                "flow low at every point",
                "--by",
                "Terry Tester");
        run(0, "shop", "claim", "decide", "EX-1001", "refer", "--reason", "photos are missing", "--by", "Kim Clerk");
    }
}
