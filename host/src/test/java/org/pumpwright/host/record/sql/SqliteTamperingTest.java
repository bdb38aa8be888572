package org.pumpwright.host.record.sql;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.record.ledger.Audit;
import org.pumpwright.host.record.ledger.ExampleLedger;
import org.pumpwright.host.record.ledger.Heads;
import org.pumpwright.host.record.ledger.Keyring;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.SigningKey;

/** A thousand tamperings with a ledger file from a seed, each on a fresh copy: the audit finds every one. */
class SqliteTamperingTest {
    private static final int TAMPERINGS = 1000;
    private static final int ENTRIES = 120;
    private static final SigningKey FIRST = SigningKey.generate();
    private static final SigningKey SECOND = SigningKey.generate();
    private static final Keyring KEYS = Keyring.of(FIRST.open(), SECOND.open());

    @TempDir
    private Path folder;

    private Path whole;
    private Heads heads;

    @BeforeEach
    void fill() throws Exception {
        whole = folder.resolve("whole.db");
        try (RecordStore first = RecordStores.inFile(whole, "stand-1", FIRST);
                RecordStore second = RecordStores.inFile(whole, "stand-2", SECOND)) {
            new ExampleLedger("stand-1", 1).fill(first, ENTRIES);
            new ExampleLedger("stand-2", 2).fill(second, ENTRIES);
            heads = Heads.of(first);
        }
        RecordStores.makeOneFile(whole);
    }

    @Test
    void aLedgerThatNobodyTouchedIsClean() throws Exception {
        for (Audit.Depth depth : Audit.Depth.values()) {
            try (RecordStore store = RecordStores.inFile(whole, "stand-1", FIRST)) {
                Audit.Result result = Audit.of(store, KEYS, heads, depth);
                assertThat(result.troubles()).isEmpty();
                assertThat(result.notices()).isEmpty();
                assertThat(result.entries()).isEqualTo(2 * ENTRIES);
            }
        }
    }

    @Test
    void everyTamperingIsFound() throws Exception {
        SplittableRandom random = new SplittableRandom(20260420);
        List<String> missed = new ArrayList<>();
        Map<String, Integer> ways = new LinkedHashMap<>();
        for (int done = 0; done < TAMPERINGS; ) {
            Path copy = Files.copy(whole, folder.resolve("copy.db"), StandardCopyOption.REPLACE_EXISTING);
            Optional<String> what = tamper(copy, random);
            if (what.isPresent()) {
                done++;
                ways.merge(what.get().substring(0, what.get().indexOf(':')), 1, Integer::sum);
                if (clean(copy)) {
                    missed.add(what.get());
                }
            }
        }
        assertThat(missed).isEmpty();
        assertThat(ways).hasSize(Tampering.Way.values().length);
    }

    private boolean clean(Path copy) throws Exception {
        try (RecordStore store = RecordStores.inFile(copy, "stand-1", FIRST)) {
            return Audit.of(store, KEYS, heads, Audit.Depth.PROVING_SIGNATURES).clean();
        }
    }

    /** The guards are put back afterwards, so that their absence betrays nothing. */
    private static Optional<String> tamper(Path file, SplittableRandom random) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA synchronous = OFF");
            Map<String, String> guards = new LinkedHashMap<>();
            try (ResultSet row = statement.executeQuery("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'")) {
                while (row.next()) {
                    guards.put(row.getString(1), row.getString(2));
                }
            }
            for (String name : guards.keySet()) {
                statement.execute("DROP TRIGGER " + name);
            }
            Optional<String> what = new Tampering(connection, Dialect.SQLITE, random).one();
            for (String sql : guards.values()) {
                statement.execute(sql);
            }
            return what;
        }
    }
}
