package org.pumpwright.host.record.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.ExampleLedger;
import org.pumpwright.host.record.ledger.Heads;
import org.pumpwright.host.record.ledger.Keyring;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.ledger.StoreException;

class BackupTest {
    private static final SigningKey KEY = SigningKey.generate();
    private static final Keyring KEYS = Keyring.of(KEY.open());
    private static final int ENTRIES = 60;

    @TempDir
    private Path folder;

    private RecordStore store;
    private Path file;

    @BeforeEach
    void fill() throws Exception {
        store = inFile("shop.db");
        new ExampleLedger("stand-1", 7).fill(store, ENTRIES);
        file = folder.resolve("backup.db");
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void aBackupGivesBackEveryEntryAndWhatIsBesideIt() throws Exception {
        Backup.Receipt receipt = Backup.write(store, file, KEYS);
        assertThat(receipt.audit().entries()).isEqualTo(ENTRIES);
        assertThat(receipt.heads()).isEqualTo(Heads.of(store));
        try (RecordStore back = inFile("back.db")) {
            Backup.restore(file, back, KEYS);
            assertSame(store, back);
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(path -> path.getFileName().toString()))
                    .contains("backup.db", "backup.db.sha256")
                    .doesNotContain("backup.db.part", "backup.db-wal", "backup.db-shm");
        }
    }

    @Test
    void sha256sumChecksTheFile() throws Exception {
        Backup.write(store, file, KEYS);
        Process process = new ProcessBuilder("sha256sum", "-c", "backup.db.sha256")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        assertThat(new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                .contains("backup.db");
        assertThat(process.waitFor()).isZero();
    }

    @Test
    void fromAServerToAFileToAServer() throws Exception {
        try (OwnPostgresql server = OwnPostgresql.start();
                RecordStore first = onServer(server);
                RecordStore second = onServer(server)) {
            new ExampleLedger("stand-1", 8).fill(first, ENTRIES);
            Backup.write(first, file, KEYS);
            Backup.restore(file, second, KEYS);
            assertSame(first, second);
        }
    }

    @Test
    void whatIsThereIsNotWrittenOver() throws Exception {
        Files.writeString(file, "something else");
        assertThatThrownBy(() -> Backup.write(store, file, KEYS))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("exists already and is left as it is");
        assertThat(file).hasContent("something else");
    }

    @Test
    void aStoreWithEntriesTakesNoRestore() throws Exception {
        Backup.write(store, file, KEYS);
        assertThatThrownBy(() -> Backup.restore(file, store, KEYS))
                .hasMessageStartingWith("there are entries of stand-1 already");
    }

    @Test
    void aBackupWithAFlippedBitIsRefused() throws Exception {
        Backup.write(store, file, KEYS);
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
            bytes.seek(bytes.length() / 2);
            int was = bytes.read();
            bytes.seek(bytes.length() / 2);
            bytes.write(was ^ 1);
        }
        try (RecordStore back = inFile("back.db")) {
            assertThatThrownBy(() -> Backup.restore(file, back, KEYS))
                    .hasMessageContaining("is not the file that was written");
            assertThat(back.chains()).isEmpty();
        }
    }

    /** A backup that could not be proven would only seem to be one. */
    @Test
    void withoutTheKeyThereIsNoBackup() {
        assertThatThrownBy(() -> Backup.write(store, file, Keyring.of()))
                .hasMessageContaining("is signed with a key that is not trusted");
        assertThat(file).doesNotExist();
        assertThat(folder.resolve("backup.db.part")).doesNotExist();
    }

    private RecordStore inFile(String name) throws StoreException {
        return RecordStores.inFile(folder.resolve(name), "stand-1", KEY);
    }

    private static RecordStore onServer(OwnPostgresql server) throws Exception {
        Properties login = new Properties();
        login.setProperty("user", OwnPostgresql.USER);
        return RecordStores.onServer(server.address(server.newDatabase()), login, "stand-1", KEY);
    }

    private static void assertSame(RecordStore one, RecordStore other) throws StoreException {
        List<Entry> entries = one.search(Search.newest(2 * ENTRIES));
        assertThat(entries).hasSize(ENTRIES);
        assertThat(other.search(Search.newest(2 * ENTRIES))).isEqualTo(entries);
        for (var entry : entries) {
            for (var digest : entry.attachments()) {
                assertThat(other.attachment(digest).orElseThrow())
                        .isEqualTo(one.attachment(digest).orElseThrow());
            }
        }
    }
}
