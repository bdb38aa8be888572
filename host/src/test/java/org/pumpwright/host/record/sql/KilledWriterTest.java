package org.pumpwright.host.record.sql;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.record.ledger.Audit;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.Heads;
import org.pumpwright.host.record.ledger.KeyFile;
import org.pumpwright.host.record.ledger.Keyring;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * A writer is killed (SIGKILL) at moments from a seed, again and again with the same store: what it said is on record is there
 * whole, and nothing half is. How often: the system property {@code pumpwright.kills}.
 */
class KilledWriterTest {
    private static final int KILLS = Integer.getInteger("pumpwright.kills", 40);
    private static final int SERVER_KILLS = 10;
    private static final int MOST_ACKNOWLEDGED = 6;
    private static final int LATEST_MICROSECONDS = 15_000;

    @TempDir
    private Path folder;

    private SigningKey key;

    @BeforeEach
    void makeKey() throws IOException {
        key = KeyFile.openOrMake(folder, "stand-1");
    }

    @Test
    void whatWasAcknowledgedIsInTheFileWhole() throws Exception {
        killAgainAndAgain(folder.resolve("ledger.db").toString(), 1);
    }

    @Test
    void whatWasAcknowledgedIsOnTheServerWhole() throws Exception {
        try (OwnPostgresql server = OwnPostgresql.start()) {
            killAgainAndAgain(server.address(server.newDatabase()), 2);
        }
    }

    /** The server with all its processes, in the middle of writing. */
    @Test
    void aKilledServerHasWhatItAcknowledged() throws Exception {
        SplittableRandom random = new SplittableRandom(3);
        List<String> acknowledged = new ArrayList<>();
        try (OwnPostgresql server = OwnPostgresql.start()) {
            String where = server.address(server.newDatabase());
            for (int kill = 0; kill < SERVER_KILLS; kill++) {
                Process writer = writer(where, "server-%d-".formatted(kill));
                InputStream said = writer.getInputStream();
                StringBuilder text = new StringBuilder();
                read(said, text, 1 + random.nextInt(MOST_ACKNOWLEDGED));
                TimeUnit.MICROSECONDS.sleep(random.nextInt(LATEST_MICROSECONDS));
                server.killAndStartAgain();
                text.append(new String(said.readAllBytes(), StandardCharsets.UTF_8));
                writer.waitFor();
                acknowledged.addAll(lines(text));
                check(where, acknowledged);
            }
        }
    }

    private void killAgainAndAgain(String where, long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> acknowledged = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            Process writer = writer(where, "killed-%d-".formatted(kill));
            StringBuilder text = new StringBuilder();
            read(writer.getInputStream(), text, random.nextInt(MOST_ACKNOWLEDGED));
            TimeUnit.MICROSECONDS.sleep(random.nextInt(LATEST_MICROSECONDS));
            // Through its handle: the other way would close what it said, too.
            writer.toHandle().destroyForcibly();
            text.append(new String(writer.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
            writer.waitFor();
            acknowledged.addAll(lines(text));
            check(where, acknowledged);
        }
        assertThat(acknowledged).hasSizeGreaterThan(KILLS);
    }

    private void check(String where, List<String> acknowledged) throws Exception {
        try (RecordStore store = WriterProgram.open(where, key)) {
            List<Entry> entries = store.search(Search.newest(10_000));
            assertThat(entries.stream().map(Entry::id)).containsAll(acknowledged);
            for (Entry entry : entries.subList(0, Math.min(entries.size(), 4 * MOST_ACKNOWLEDGED))) {
                assertThat(TracedDraft.isWhole(store, entry)).as(entry.id()).isTrue();
            }
            Audit.Result audit = audit(store);
            assertThat(audit.troubles()).isEmpty();
            if (audit.attachments() != audit.entries()) {
                // While the audit went on, the server finished what the killed writer had sent whole.
                audit = audit(store);
                assertThat(audit.troubles()).isEmpty();
            }
            assertThat(audit.attachments()).isEqualTo(audit.entries());
        }
    }

    private Audit.Result audit(RecordStore store) throws StoreException {
        return Audit.of(store, Keyring.of(key.open()), Heads.NONE, Audit.Depth.PROVING_SIGNATURES);
    }

    private Process writer(String where, String ids) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xmx128m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        WriterProgram.class.getName(),
                        where,
                        folder.toString(),
                        ids)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static void read(InputStream said, StringBuilder text, int lines) throws IOException {
        int seen = 0;
        while (seen < lines) {
            int c = said.read();
            if (c < 0) {
                throw new IOException("the writer ended by itself after: " + text);
            }
            text.append((char) c);
            seen += c == '\n' ? 1 : 0;
        }
    }

    /** A line without its end was not acknowledged. */
    private static List<String> lines(StringBuilder text) {
        String whole = text.substring(0, text.lastIndexOf("\n") + 1);
        return whole.lines().toList();
    }
}
