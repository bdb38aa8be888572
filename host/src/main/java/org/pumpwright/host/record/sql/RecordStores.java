package org.pumpwright.host.record.sql;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.Properties;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.record.ledger.StoreException.Reason;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** Opens stores of records; tables are made, or brought up to date, on opening. Thread-safe. */
public final class RecordStores {
    private static final String MIGRATIONS = "classpath:org/pumpwright/host/record/sql/";
    /** Number of the last migration. */
    static final int NEWEST = 2;

    /** For a store that is never appended to. */
    private static final String NO_CHAIN = "none";

    private static final int CACHE_KIBIBYTES = 16 << 10;
    private static final int BUSY_MILLIS = 30_000;
    private static final int CONNECTIONS = 8;

    private RecordStores() {}

    /**
     * A store in a file of SQLite: write-ahead log, every commit flushed to the disk.
     *
     * @param chain the chain that its own entries join
     * @throws StoreException when the file can't be made or is no such store
     */
    public static RecordStore inFile(Path file, String chain, SigningKey key) throws StoreException {
        return inFile(file, chain, key, Clock.systemUTC());
    }

    /** The same by another clock. */
    static RecordStore inFile(Path file, String chain, SigningKey key, Clock clock) throws StoreException {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
        } catch (IOException e) {
            throw new StoreException(
                    Reason.STORE_FAILED, "%s can't be made: %s. Choose another folder.".formatted(file, e), e);
        }
        return open(file, durable(), chain, key, clock);
    }

    /**
     * A backup, to be looked at or copied from; the file is not touched.
     *
     * @throws StoreException when it can't be read or is no store of records
     */
    public static RecordStore readOnly(Path file) throws StoreException {
        if (!Files.isReadable(file)) {
            throw new StoreException(
                    Reason.STORE_FAILED, "%s is not there or can't be read. Check the name.".formatted(file));
        }
        SQLiteConfig settings = new SQLiteConfig();
        settings.setReadOnly(true);
        settings.setBusyTimeout(BUSY_MILLIS);
        return open(file, settings, NO_CHAIN, SigningKey.generate(), Clock.systemUTC());
    }

    /** A new file that is flushed only when it is whole. */
    static RecordStore forCopy(Path file) throws StoreException {
        SQLiteConfig settings = durable();
        settings.setSynchronous(SQLiteConfig.SynchronousMode.OFF);
        return open(file, settings, NO_CHAIN, SigningKey.generate(), Clock.systemUTC());
    }

    /** Ends the write-ahead log, so that a store is one file which can be read where nothing can be written. */
    static void makeOneFile(Path file) throws StoreException {
        SQLiteConfig settings = new SQLiteConfig();
        settings.setJournalMode(SQLiteConfig.JournalMode.DELETE);
        try (Connection connection = settings.createConnection("jdbc:sqlite:" + file)) {
            connection.isValid(1);
        } catch (SQLException e) {
            throw failed(file.toString(), e);
        }
    }

    private static SQLiteConfig durable() {
        SQLiteConfig settings = new SQLiteConfig();
        settings.setJournalMode(SQLiteConfig.JournalMode.WAL);
        settings.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        // Writers queue from their first statement on, so that none finds the chain longer than it read it.
        settings.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        settings.setBusyTimeout(BUSY_MILLIS);
        return settings;
    }

    private static RecordStore open(Path file, SQLiteConfig settings, String chain, SigningKey key, Clock clock)
            throws StoreException {
        settings.setCacheSize(-CACHE_KIBIBYTES);
        SQLiteDataSource source = new SQLiteDataSource(settings);
        source.setUrl("jdbc:sqlite:" + file);
        makeTables(source, Dialect.SQLITE, file.toString());
        KeptConnections connections = new KeptConnections(source);
        return new SqlRecordStore(Jdbi.create(connections), Dialect.SQLITE, chain, key, clock, connections::close);
    }

    /**
     * A store in PostgreSQL, for several stands and a desk at once.
     *
     * @param address a JDBC address, such as {@code jdbc:postgresql://host/database}
     * @param login user, password and other settings of the driver
     * @param chain the chain that this program's own entries join
     * @throws StoreException when the database can't be reached or is no such store
     */
    public static RecordStore onServer(String address, Properties login, String chain, SigningKey key)
            throws StoreException {
        HikariConfig pool = pool(address);
        pool.setDataSourceProperties(login);
        // Whatever the server's own setting: an entry that was acknowledged is on its disk.
        pool.setConnectionInitSql("SET synchronous_commit TO on");
        HikariDataSource source;
        try {
            source = new HikariDataSource(pool);
        } catch (RuntimeException e) {
            throw failed(address, e);
        }
        try {
            makeTables(source, Dialect.POSTGRESQL, address);
        } catch (StoreException e) {
            source.close();
            throw e;
        }
        return new SqlRecordStore(
                Jdbi.create(source), Dialect.POSTGRESQL, chain, key, Clock.systemUTC(), source::close);
    }

    private static HikariConfig pool(String address) {
        HikariConfig pool = new HikariConfig();
        pool.setJdbcUrl(address);
        pool.setMaximumPoolSize(CONNECTIONS);
        pool.setMinimumIdle(0);
        pool.setInitializationFailTimeout(1);
        return pool;
    }

    private static void makeTables(DataSource source, Dialect dialect, String where) throws StoreException {
        if (isNewest(source)) {
            return;
        }
        try {
            Flyway.configure()
                    .dataSource(source)
                    .locations(MIGRATIONS + "common", MIGRATIONS + dialect.folder())
                    .placeholders(dialect.placeholders())
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw failed(where, e);
        }
    }

    /** Looked up before the tool for migrations is loaded, which takes longer than all the rest of a short command. */
    private static boolean isNewest(DataSource source) {
        String sql = "SELECT 1 FROM flyway_schema_history WHERE version = '%d' AND success".formatted(NEWEST);
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            return row.next();
        } catch (SQLException e) {
            // There are no tables yet. If it is anything else, the migration says so.
            return false;
        }
    }

    private static StoreException failed(String where, Exception e) {
        // The driver's first sentence; its own advice is for programmers.
        String why =
                String.valueOf(e.getMessage()).lines().findFirst().orElse("").split("\\.( |$)", 2)[0];
        return new StoreException(
                Reason.STORE_FAILED,
                "the records in %s can't be opened: %s. Check that it is there, not full, and a store of records."
                        .formatted(where, why),
                e);
    }
}
