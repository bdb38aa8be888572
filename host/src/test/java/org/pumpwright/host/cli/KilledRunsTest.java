package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.record.StoreChoice;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.trace.Ending;

/**
 * Programs that are killed at moments that a seed chooses, without a chance to say anything. Each next start keeps the run
 * that the one before it left. Eight kills, or as many as the property {@code kills} says: {@code mvn test -pl host -am
 * -Dtest=KilledRunsTest -Dsurefire.failIfNoSpecifiedTests=false -Dkills=50}.
 */
@Timeout(600)
final class KilledRunsTest {
    private static final int KILLS = Integer.getInteger("kills", 8);
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final long LEAST_MILLIS = 20;
    private static final int MOST_MORE_MILLIS = 1480;
    private static final int PACE = 10;
    /** A second of the board, and 0.3 s of the wall for which a busy machine may keep the disk's thread waiting. */
    private static final double MOST_LOST_SECONDS = 1 + 0.3 * PACE;

    private static final double SAMPLE_SECONDS = 0.02;
    /** Live values come with the first sample that is 0.25 s after the ones before. */
    private static final int SAMPLES_A_LIVE_EVENT = 13;

    private static final Ending CUT_SHORT =
            new Ending(Ending.Kind.PROGRAM_FAULT, "the program ended before the run did");

    @TempDir
    private Path folder;

    private final Random moment = new Random(20_260_302);

    @Test
    void everyKilledRunIsKeptInvalidWithItsSamplesUpToTheLastSecond() throws Exception {
        List<List<String>> told = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            told.add(startAndKill(kill));
        }
        new CommandLineBench()
                .run(
                        "accept",
                        "--stand",
                        "simulated",
                        "--model",
                        "demo-pump",
                        "--records",
                        records().toString());

        List<RunRecord> killed = readAll("record.json").stream()
                .filter(record -> record.ending().equals(CUT_SHORT))
                .toList();
        assertThat(killed).hasSize(KILLS).allMatch(record -> record.grade().verdict() == Verdict.INVALID);
        assertThat(files("journal.jsonl")).isEmpty();
        assertThat(onRecord()).containsAll(killed.stream().map(RunRecord::id).toList());
        double mostLost = 0;
        double longest = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            int kept = killed.get(kill).trace().samples().size();
            mostLost = Math.max(mostLost, (mostTaken(told.get(kill)) - kept) * SAMPLE_SECONDS);
            longest = Math.max(longest, kept * SAMPLE_SECONDS);
            assertThat(count(told.get(kill), "recovered")).isEqualTo(kill == 0 ? 0 : 1);
            // The mark of a point goes to the disk with the next samples.
            assertThat(killed.get(kill).trace().points().size())
                    .isBetween(count(told.get(kill), "point") - 1, count(told.get(kill), "point") + 1);
        }
        System.out.printf(
                Locale.ROOT,
                "%d kills, %d runs kept of up to %.1f s, at most %.2f s of a run lost%n",
                KILLS,
                killed.size(),
                longest,
                mostLost);
        assertThat(mostLost).isLessThan(MOST_LOST_SECONDS);
    }

    /** As many samples as the program can have taken: those up to the last live values that it told, and until the next. */
    private static int mostTaken(List<String> told) {
        return 1 + SAMPLES_A_LIVE_EVENT * (count(told, "live") + 1);
    }

    private static int count(List<String> told, String event) {
        return (int) told.stream()
                .filter(line -> line.startsWith("{\"event\":\"" + event + "\""))
                .count();
    }

    /** The lines that the program told until it was killed; the last may be torn. */
    private List<String> startAndKill(int number) throws Exception {
        Path told = folder.resolve("told-%d.txt".formatted(number));
        ProcessBuilder starting = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "-Dpumpwright.home=" + Firmware.root(),
                        "-Djava.io.tmpdir=" + folder,
                        Main.class.getName(),
                        "accept",
                        "--stand",
                        "simulated",
                        "--model",
                        "demo-pump",
                        "--pace",
                        Integer.toString(PACE),
                        "--json",
                        "--records",
                        records().toString())
                .redirectErrorStream(true)
                .redirectOutput(told.toFile());
        starting.environment().put("PUMPWRIGHT_KEYS", folder.resolve("keys").toString());
        Process program = starting.start();
        try {
            awaitArmed(told, program);
            Thread.sleep(LEAST_MILLIS + moment.nextInt(MOST_MORE_MILLIS));
        } finally {
            program.destroyForcibly().waitFor();
        }
        List<String> lines = Files.readAllLines(told);
        assertThat(count(lines, "ended")).as("the run was over before the kill").isZero();
        return lines;
    }

    private static void awaitArmed(Path told, Process program) throws IOException {
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (count(Files.readAllLines(told), "began") == 0) {
            if (!program.isAlive() || System.nanoTime() > until) {
                throw new AssertionError("the run did not begin; the program said: " + Files.readString(told));
            }
            LockSupport.parkNanos(5_000_000);
        }
    }

    /** Runs that the next start has put on record too. */
    private List<String> onRecord() throws Exception {
        new CommandLineBench().run("record", "enter", "--records", records().toString());
        StoreChoice choice = StoreChoice.of(Optional.empty(), Map.of(), records(), folder);
        try (RecordStore store = choice.openToRead()) {
            return store.search(Search.newest(1000).ofKind(EntryKind.RUN)).stream()
                    .map(entry -> entry.id().substring(entry.id().indexOf('/') + 1))
                    .toList();
        }
    }

    private Path records() {
        return folder.resolve("records");
    }

    private List<Path> files(String name) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.endsWith(name)).sorted().toList();
        }
    }

    private List<RunRecord> readAll(String name) throws Exception {
        List<RunRecord> records = new ArrayList<>();
        for (Path file : files(name)) {
            records.add(RunRecordFile.read(file));
        }
        return records;
    }
}
