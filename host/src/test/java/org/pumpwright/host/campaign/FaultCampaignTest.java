package org.pumpwright.host.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pumpwright.host.bench.Firmware;

/**
 * The fault campaign: each fault is struck several times, at moments drawn anew for each try, in the middle of an acceptance
 * run on the microcontroller's own program. {@code -Dcampaign.seed} and {@code -Dcampaign.tries} draw others and more.
 */
@Timeout(600)
final class FaultCampaignTest {
    private static final long SEED = Long.getLong("campaign.seed", 20_261_125);
    private static final int TRIES = Integer.getInteger("campaign.tries", 3);
    private static final int AT_A_TIME = 2;
    private static final int RUNS_AT_MOST = 5;
    private static final AtomicInteger BEGUN_ANEW = new AtomicInteger();

    private static final CampaignTable TABLE = new CampaignTable();
    private static final ExecutorService WORKERS = Executors.newFixedThreadPool(AT_A_TIME);

    @TempDir
    private Path folder;

    static List<Fault> faults() {
        System.out.println("fault campaign: seed " + SEED + ", " + TRIES
                + " tries of each fault, at least one in each of its stages");
        return FaultList.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void leavesNothingDrivenForLongerThanStatedAndARecordThatTellsTheTruth(Fault fault) throws Exception {
        Random random = new Random(SEED ^ fault.sentence().hashCode());
        List<Future<Seen>> tries = new ArrayList<>();
        for (int i = 0; i < Math.max(TRIES, fault.stages().size()); i++) {
            Stage stage = fault.stages().get(i % fault.stages().size());
            Moment moment = Moment.drawn(stage, random);
            Path own = folder.resolve("" + i);
            tries.add(WORKERS.submit(() -> struck(fault, moment, own)));
        }
        List<Seen> seen = new ArrayList<>();
        for (Future<Seen> one : tries) {
            seen.add(done(one));
        }
        TABLE.add(fault, seen);
        for (Seen one : seen) {
            assertThat(one).as("seed %d, struck at %s", SEED, one.moment()).satisfies(s -> Judge.judge(fault, s));
        }
    }

    /** A run that something else ended before its moment came, as on a machine too busy for real time, is begun anew. */
    private static Seen struck(Fault fault, Moment moment, Path own) throws Exception {
        for (int i = 1; ; i++) {
            try {
                return new Attempt(Files.createDirectories(own.resolve("run-" + i)), plan()).carryOut(fault, moment);
            } catch (MomentNeverCame e) {
                if (i == RUNS_AT_MOST) {
                    throw e;
                }
                System.out.println("fault campaign: begun anew: " + fault + ": " + e.getMessage());
                BEGUN_ANEW.incrementAndGet();
            }
        }
    }

    private static Seen done(Future<Seen> one) throws Exception {
        try {
            return one.get();
        } catch (ExecutionException e) {
            throw new AssertionError(e.getCause());
        }
    }

    private static Path plan() throws URISyntaxException {
        return Path.of(Objects.requireNonNull(FaultCampaignTest.class.getResource("short-sweep.yaml"))
                .toURI());
    }

    @AfterAll
    static void tell() throws IOException {
        WORKERS.shutdownNow();
        Path file = Firmware.root().resolve("host/target/fault-campaign.md");
        Files.createDirectories(file.getParent());
        String about = String.format(
                Locale.ROOT,
                "%d tries, seed %d; %d runs begun anew because something else ended them before the fault.",
                TABLE.tries(),
                SEED,
                BEGUN_ANEW.get());
        Files.writeString(file, TABLE.text(about));
    }
}
