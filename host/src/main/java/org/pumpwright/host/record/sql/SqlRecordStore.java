package org.pumpwright.host.record.sql;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.pumpwright.host.record.ledger.CanonicalJson;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.record.ledger.StoreException.Reason;

/** Entries in an SQL database; see {@link RecordStores} for how to open one. Thread-safe. */
final class SqlRecordStore implements RecordStore {
    private static final int FETCHED_AT_ONCE = 500;

    private final Jdbi database;
    private final Dialect dialect;
    private final String chain;
    private final SigningKey key;
    private final Runnable closing;

    /**
     * A store whose tables are there.
     *
     * @param chain the chain that its own entries join
     * @param key with which they are signed
     * @param closing ends the connections
     */
    SqlRecordStore(Jdbi database, Dialect dialect, String chain, SigningKey key, Runnable closing) {
        this.database = database;
        this.dialect = dialect;
        this.chain = chain;
        this.key = key;
        this.closing = closing;
    }

    @Override
    public Entry append(Draft draft) throws StoreException {
        return writing("put " + draft.id() + " on record", handle -> {
            Optional<Head> head = lockedHead(handle, chain);
            refuseTaken(handle, draft.id());
            if (draft.amends().isPresent()) {
                requireThere(handle, draft.amends().get().id());
            }
            Entry entry = entry(draft, head);
            attach(handle, draft.attachments());
            insert(handle, entry);
            return entry;
        });
    }

    private Entry entry(Draft draft, Optional<Head> head) {
        Entry unsigned = new Entry(
                chain,
                head.map(Head::number).orElse(0L) + 1,
                draft.kind(),
                draft.id(),
                draft.at(),
                head.map(Head::digest).orElse(Digest.NOTHING),
                new String(CanonicalJson.of(draft.content()), java.nio.charset.StandardCharsets.UTF_8),
                draft.attachments().stream().map(Digest::of).toList(),
                draft.amends(),
                draft.finder(),
                new Entry.Seal(key.open().digest(), ""));
        return unsigned.sealed(key);
    }

    @Override
    public int take(List<Foreign> entries) throws StoreException {
        return writing("take entries of another store", handle -> {
            int taken = 0;
            for (Foreign foreign : entries) {
                taken += take(handle, foreign) ? 1 : 0;
            }
            return taken;
        });
    }

    private boolean take(Handle handle, Foreign foreign) throws StoreException {
        Entry entry = foreign.entry();
        Optional<Head> head = lockedHead(handle, entry.chain());
        if (head.isPresent() && entry.number() <= head.get().number()) {
            requireSame(handle, entry);
            return false;
        }
        Digest last = head.map(Head::digest).orElse(Digest.NOTHING);
        if (entry.number() != head.map(Head::number).orElse(0L) + 1
                || !entry.prior().equals(last)) {
            throw new StoreException(
                    Reason.NOTHING_TO_FOLLOW,
                    "entry %d of %s does not follow what is here of that chain. Nothing was taken; export that stand again, from its first entry on."
                            .formatted(entry.number(), entry.chain()));
        }
        attach(handle, foreign.attachments());
        insert(handle, entry);
        return true;
    }

    private static void requireSame(Handle handle, Entry entry) throws StoreException {
        Optional<Entry> here = handle.createQuery("SELECT * FROM entry WHERE chain = :chain AND number = :number")
                .bind("chain", entry.chain())
                .bind("number", entry.number())
                .map((row, context) -> EntryRow.entry(row))
                .findOne();
        if (here.isEmpty() || !here.get().digest().equals(entry.digest())) {
            throw new StoreException(
                    Reason.ID_TAKEN,
                    "entry %d of %s is another one here. Nothing was taken; run an audit of both stores."
                            .formatted(entry.number(), entry.chain()));
        }
    }

    /** The end of a chain. Until this transaction ends no other writer of the chain gets past here. */
    private Optional<Head> lockedHead(Handle handle, String name) {
        handle.createUpdate("INSERT INTO chain (name) VALUES (:name) ON CONFLICT DO NOTHING")
                .bind("name", name)
                .execute();
        handle.createQuery("SELECT name FROM chain WHERE name = :name" + dialect.lock())
                .bind("name", name)
                .mapTo(String.class)
                .one();
        return head(handle, name);
    }

    private static Optional<Head> head(Handle handle, String name) {
        return handle.createQuery("SELECT * FROM entry WHERE chain = :chain ORDER BY number DESC LIMIT 1")
                .bind("chain", name)
                .map((row, context) -> EntryRow.entry(row))
                .findOne()
                .map(entry -> new Head(entry.number(), entry.digest()));
    }

    private static void refuseTaken(Handle handle, String id) throws StoreException {
        if (find(handle, id).isPresent()) {
            throw new StoreException(
                    Reason.ID_TAKEN,
                    "there is an entry %s already; nothing was changed. Amend it instead.".formatted(id));
        }
    }

    private static void requireThere(Handle handle, String id) throws StoreException {
        if (find(handle, id).isEmpty()) {
            throw new StoreException(
                    Reason.NOTHING_TO_FOLLOW,
                    "there is no entry %s that could be amended. Look for it by its serial number or day."
                            .formatted(id));
        }
    }

    private static void attach(Handle handle, List<byte[]> attachments) {
        for (byte[] bytes : attachments) {
            handle.createUpdate(
                            "INSERT INTO attachment (sha256, bytes) VALUES (:sha256, :bytes) ON CONFLICT DO NOTHING")
                    .bind("sha256", Digest.of(bytes).hex())
                    .bind("bytes", bytes)
                    .execute();
        }
    }

    private static void insert(Handle handle, Entry entry) {
        Map<String, Object> row = EntryRow.of(entry);
        String columns = String.join(", ", row.keySet());
        String values = row.keySet().stream().map(column -> ":" + column).collect(Collectors.joining(", "));
        handle.createUpdate("INSERT INTO entry (" + columns + ") VALUES (" + values + ")")
                .bindMap(row)
                .execute();
    }

    @Override
    public Optional<Entry> find(String id) throws StoreException {
        return reading("look for " + id, handle -> find(handle, id));
    }

    private static Optional<Entry> find(Handle handle, String id) {
        return handle.createQuery("SELECT * FROM entry WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> EntryRow.entry(row))
                .findOne();
    }

    @Override
    public List<Entry> search(Search search) throws StoreException {
        SearchSql sql = new SearchSql(search, dialect);
        return reading(
                "search",
                handle -> handle.createQuery(sql.sql())
                        .bindMap(sql.values())
                        .map((row, context) -> EntryRow.entry(row))
                        .list());
    }

    @Override
    public List<Entry> amendments(String id) throws StoreException {
        return reading(
                "look for amendments",
                handle -> handle.createQuery("SELECT * FROM entry WHERE amends = :id ORDER BY place")
                        .bind("id", id)
                        .map((row, context) -> EntryRow.entry(row))
                        .list());
    }

    @Override
    public Optional<byte[]> attachment(Digest digest) throws StoreException {
        return reading(
                "read what belongs to an entry",
                handle -> handle.createQuery("SELECT bytes FROM attachment WHERE sha256 = :sha256")
                        .bind("sha256", digest.hex())
                        .mapTo(byte[].class)
                        .findOne());
    }

    @Override
    public List<String> chains() throws StoreException {
        return reading(
                "list the chains",
                handle -> handle.createQuery("SELECT name FROM chain ORDER BY name")
                        .mapTo(String.class)
                        .list());
    }

    @Override
    public void each(String name, Consumer<Kept> kept) throws StoreException {
        reading("read a chain", handle -> {
            // PostgreSQL sends rows bit by bit only within a transaction; in SQLite one would keep writers waiting.
            if (dialect == Dialect.POSTGRESQL) {
                handle.begin();
            }
            try (Stream<Kept> all = handle
                    .createQuery("SELECT * FROM entry WHERE chain = :chain ORDER BY number")
                    .bind("chain", name)
                    .setFetchSize(FETCHED_AT_ONCE)
                    .map((row, context) -> EntryRow.kept(row))
                    .stream()) {
                all.forEach(kept);
            } finally {
                if (dialect == Dialect.POSTGRESQL) {
                    handle.rollback();
                }
            }
            return name;
        });
    }

    @Override
    public Optional<Head> head(String name) throws StoreException {
        return reading("look for the end of a chain", handle -> head(handle, name));
    }

    @Override
    public void close() {
        closing.run();
    }

    /** What is done with a connection. */
    private interface Work<T> {
        T with(Handle handle) throws StoreException;
    }

    private <T> T reading(String doing, Work<T> work) throws StoreException {
        try {
            return database.withHandle(work::with);
        } catch (JdbiException e) {
            throw failed(doing, e);
        }
    }

    private <T> T writing(String doing, Work<T> work) throws StoreException {
        try {
            return database.inTransaction(work::with);
        } catch (JdbiException e) {
            throw failed(doing, e);
        }
    }

    private static StoreException failed(String doing, JdbiException e) {
        List<String> why = new ArrayList<>();
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            why.add(String.valueOf(cause.getMessage()).lines().findFirst().orElse(""));
        }
        return new StoreException(
                Reason.STORE_FAILED,
                "could not %s: %s. Nothing was half done; check that the disk is not full and the database is there."
                        .formatted(doing, why.get(why.size() - 1)),
                e);
    }
}
