package org.pumpwright.host.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.cli.CommandLineBench;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.record.sql.OwnPostgresql;
import org.pumpwright.host.record.sql.SmallDisk;

/** A disk that is full and a server that goes away cost no run and no verdict. */
@Timeout(300)
final class StoreInTroubleTest {
    private static final int PATIENCE_SECONDS = 120;

    @TempDir
    private Path folder;

    private int minutes;

    private CommandLineBench bench() {
        minutes += 10;
        return new CommandLineBench(
                Clock.offset(CommandLineBench.CLOCK, Duration.ofMinutes(minutes)),
                folder.resolve("spare"),
                Map.of("PUMPWRIGHT_KEYS", folder.resolve("keys").toString()));
    }

    private static int accept(CommandLineBench bench, Path records, String serial, String... more) {
        String[] words = {
            "accept",
            "--stand",
            "simulated",
            "--model",
            "demo-pump",
            "--serial",
            serial,
            "--records",
            records.toString()
        };
        String[] all = java.util.Arrays.copyOf(words, words.length + more.length);
        System.arraycopy(more, 0, all, words.length, more.length);
        return bench.run(all);
    }

    private String told(String... words) {
        CommandLineBench bench = bench();
        assertThat(bench.run(words)).as(bench.err() + bench.out()).isZero();
        return bench.out();
    }

    @Test
    void aFullDiskSendsTheRunToTheSpareFolderAndItIsEnteredLater() throws Exception {
        try (SmallDisk disk = SmallDisk.mount(folder.resolve("disk"), 8)) {
            Path records = disk.folder().resolve("records");
            assertThat(accept(bench(), records, "SN-BEFORE")).isEqualTo(ExitCode.PASS);
            Path filling = disk.fill();

            CommandLineBench full = bench();
            assertThat(accept(full, records, "SN-FULL")).as(full.err()).isEqualTo(ExitCode.PASS);

            assertThat(full.out())
                    .contains("The run is kept in " + folder.resolve("spare"))
                    .containsOnlyOnce("Not on record yet: ")
                    .contains("2 waiting, safe in the folder;");
            Files.delete(filling);
            told("record", "enter", "--records", records.toString());
            assertThat(told("record", "find", "--kind", "run", "--records", records.toString()))
                    .contains("SN-BEFORE", "SN-FULL");
            assertThat(told("record", "audit", "--records", records.toString())).contains("all as they were signed.");
        }
    }

    @Test
    void aFullDiskUnderTheLedgerAloneLeavesTheRunInItsFolder() throws Exception {
        try (SmallDisk disk = SmallDisk.mount(folder.resolve("disk"), 2)) {
            Path records = Files.createDirectories(folder.resolve("records"));
            Files.createSymbolicLink(records.resolve("ledger.db"), disk.folder().resolve("ledger.db"));
            assertThat(accept(bench(), records, "SN-BEFORE")).isEqualTo(ExitCode.PASS);
            Path filling = disk.fill();

            CommandLineBench full = bench();
            assertThat(accept(full, records, "SN-FULL")).as(full.err()).isEqualTo(ExitCode.PASS);

            assertThat(full.out())
                    .containsOnlyOnce("CAUTION        Not on record yet: ")
                    .contains("2 waiting, safe in the folder;")
                    .doesNotContain("The run is kept in");
            Files.delete(filling);
            told("record", "enter", "--records", records.toString());
            assertThat(told("record", "find", "--kind", "run", "--records", records.toString()))
                    .contains("SN-BEFORE", "SN-FULL");
        }
    }

    @Test
    void aServerThatIsKilledDuringARunLeavesTheRunInItsFolder() throws Exception {
        try (OwnPostgresql server = OwnPostgresql.start()) {
            String store = server.address(server.newDatabase()) + "?user=" + OwnPostgresql.USER;
            Path records = folder.resolve("records");
            accept(bench(), records, "SN-BEFORE", "--store", store);
            CommandLineBench during = bench();
            CompletableFuture<Integer> exit = CompletableFuture.supplyAsync(
                    () -> accept(during, records, "SN-KILLED", "--store", store, "--pace", "20"));
            await(during, exit);
            server.kill();

            assertThat(exit.get(PATIENCE_SECONDS, TimeUnit.SECONDS)).isEqualTo(ExitCode.PASS);
            assertThat(during.out())
                    .containsOnlyOnce("CAUTION        Not on record yet: ")
                    .contains("2 waiting, safe in the folder;");
            server.startAgain();
            String records0 = records.toString();
            assertThat(told("record", "enter", "--store", store, "--records", records0))
                    .contains("On record      simulated/");
            assertThat(told("record", "find", "--kind", "run", "--store", store, "--records", records0))
                    .contains("SN-BEFORE", "SN-KILLED");
            assertThat(told("record", "audit", "--store", store, "--records", records0))
                    .contains("all as they were signed.");
        }
    }

    private static void await(CommandLineBench bench, CompletableFuture<Integer> exit) {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!bench.out().contains("Armed.")) {
            assertThat(exit.isDone() || System.nanoTime() > until)
                    .as("the run did not begin: " + bench.out() + bench.err())
                    .isFalse();
            LockSupport.parkNanos(5_000_000);
        }
    }
}
