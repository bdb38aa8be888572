package org.pumpwright.host.record.sql;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.record.ledger.Audit;
import org.pumpwright.host.record.ledger.ExampleLedger;
import org.pumpwright.host.record.ledger.Heads;
import org.pumpwright.host.record.ledger.Keyring;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.ledger.StoreException;

/** A hundred tamperings with a database from a seed, each on a fresh copy: the audit finds every one. */
class PostgresqlTamperingTest {
    private static final int TAMPERINGS = 100;
    private static final int ENTRIES = 100;
    private static final SigningKey FIRST = SigningKey.generate();
    private static final SigningKey SECOND = SigningKey.generate();
    private static final Keyring KEYS = Keyring.of(FIRST.open(), SECOND.open());

    @Test
    void everyTamperingIsFound() throws Exception {
        SplittableRandom random = new SplittableRandom(20260421);
        List<String> missed = new ArrayList<>();
        try (OwnPostgresql server = OwnPostgresql.start()) {
            String whole = server.newDatabase();
            Heads heads = fill(server.address(whole));
            for (int done = 0; done < TAMPERINGS; ) {
                String copy = server.newDatabase(whole);
                Optional<String> what = tamper(server.address(copy), random);
                if (what.isPresent()) {
                    done++;
                    try (RecordStore store = open(server.address(copy), "stand-1", FIRST)) {
                        if (Audit.of(store, KEYS, heads, Audit.Depth.PROVING_SIGNATURES)
                                .clean()) {
                            missed.add(what.get());
                        }
                    }
                }
            }
        }
        assertThat(missed).isEmpty();
    }

    private static Heads fill(String address) throws StoreException {
        try (RecordStore first = open(address, "stand-1", FIRST);
                RecordStore second = open(address, "stand-2", SECOND)) {
            new ExampleLedger("stand-1", 1).fill(first, ENTRIES);
            new ExampleLedger("stand-2", 2).fill(second, ENTRIES);
            Heads heads = Heads.of(first);
            assertThat(Audit.of(first, KEYS, heads, Audit.Depth.EVERY_SIGNATURE).troubles())
                    .isEmpty();
            return heads;
        }
    }

    private static RecordStore open(String address, String chain, SigningKey key) throws StoreException {
        Properties login = new Properties();
        login.setProperty("user", OwnPostgresql.USER);
        return RecordStores.onServer(address, login, chain, key);
    }

    /** The guards are put back afterwards, so that their absence betrays nothing. */
    private static Optional<String> tamper(String address, SplittableRandom random) throws SQLException {
        try (Connection connection = DriverManager.getConnection(address, OwnPostgresql.USER, "");
                Statement statement = connection.createStatement()) {
            for (String table : List.of("entry", "attachment")) {
                statement.execute("ALTER TABLE " + table + " DISABLE TRIGGER USER");
            }
            Optional<String> what = new Tampering(connection, Dialect.POSTGRESQL, random).one();
            for (String table : List.of("entry", "attachment")) {
                statement.execute("ALTER TABLE " + table + " ENABLE TRIGGER USER");
            }
            return what;
        }
    }
}
