package org.pumpwright.host.record.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.record.ledger.Audit;
import org.pumpwright.host.record.ledger.ExampleLedger;
import org.pumpwright.host.record.ledger.Heads;
import org.pumpwright.host.record.ledger.Keyring;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.record.ledger.StoreException.Reason;

class RecordStoresTest {
    private static final SigningKey KEY = SigningKey.generate();

    @TempDir
    private Path folder;

    /** Else a store would be taken to be up to date that is not. */
    @Test
    void theNewestMigrationIsTheOneThatIsLookedFor() throws Exception {
        Path file = folder.resolve("ledger.db");
        RecordStores.inFile(file, "stand-1", KEY).close();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                ResultSet row = connection
                        .createStatement()
                        .executeQuery("SELECT MAX(CAST(version AS INTEGER)) FROM flyway_schema_history")) {
            assertThat(row.getInt(1)).isEqualTo(RecordStores.NEWEST);
        }
    }

    @Test
    void aFileThatIsNoStoreIsTold() throws Exception {
        Path file = Files.writeString(folder.resolve("ledger.db"), "no database but a text ".repeat(100));
        assertThatThrownBy(() -> RecordStores.inFile(file, "stand-1", KEY))
                .isInstanceOf(StoreException.class)
                .hasMessageStartingWith("the records in " + file + " can't be opened");
    }

    @Test
    void aFileThatIsOnlyReadTakesNoEntry() throws Exception {
        Path file = folder.resolve("ledger.db");
        try (RecordStore store = RecordStores.inFile(file, "stand-1", KEY)) {
            store.append(new ExampleLedger("stand-1", 1).next());
        }
        try (RecordStore store = RecordStores.readOnly(file)) {
            assertThat(store.find("stand-1/1")).isPresent();
            assertThatThrownBy(() -> store.append(new ExampleLedger("other", 1).next()))
                    .isInstanceOf(StoreException.class);
        }
    }

    /** Else a genuine signature would vouch for an entry that was put there without the key. */
    @Test
    void nothingIsPutBehindAnEntryOfAnotherHand() throws Exception {
        Path file = folder.resolve("ledger.db");
        try (RecordStore store = RecordStores.inFile(file, "stand-1", KEY)) {
            ExampleLedger example = new ExampleLedger("stand-1", 1);
            store.append(example.next());
            forgeLast(file);
            assertThatThrownBy(() -> store.append(example.next()))
                    .isInstanceOfSatisfying(
                            StoreException.class, e -> assertThat(e.reason()).isEqualTo(Reason.NOTHING_TO_FOLLOW))
                    .hasMessageStartingWith("entry 1 of stand-1 was changed or put there by another hand");
            assertThat(store.find("stand-1/2")).isEqualTo(Optional.empty());
        }
    }

    @Test
    void aClockThatWasSetBackDoesNotGoBackInAChain() throws Exception {
        Path file = folder.resolve("ledger.db");
        Instant now = Instant.parse("2026-04-20T14:00:00.123Z");
        ExampleLedger example = new ExampleLedger("stand-1", 1);
        try (RecordStore store = RecordStores.inFile(file, "stand-1", KEY, Clock.fixed(now, ZoneOffset.UTC))) {
            assertThat(store.append(example.next()).entered()).isEqualTo(now);
        }
        Clock back = Clock.fixed(now.minusSeconds(86_400), ZoneOffset.UTC);
        try (RecordStore store = RecordStores.inFile(file, "stand-1", KEY, back)) {
            assertThat(store.append(example.next()).entered()).isEqualTo(now);
            assertThat(Audit.of(store, Keyring.of(KEY.open()), Heads.NONE, Audit.Depth.EVERY_SIGNATURE)
                            .clean())
                    .isTrue();
        }
    }

    private static void forgeLast(Path file) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            connection.createStatement().execute("DROP TRIGGER entry_no_update");
            connection.createStatement().execute("UPDATE entry SET content = '{}'");
        }
    }
}
