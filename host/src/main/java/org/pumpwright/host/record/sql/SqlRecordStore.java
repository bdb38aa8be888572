package org.pumpwright.host.record.sql;

import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Query;
import org.pumpwright.host.record.ledger.CanonicalJson;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.record.ledger.StoreException.Reason;

/** Entries in an SQL database; see {@link RecordStores} for how to open one. Thread-safe. */
final class SqlRecordStore implements RecordStore {
    private static final int FETCHED_AT_ONCE = 500;
    private static final int ATTACHMENTS_AT_ONCE = 8;

    /** From each name to the next one; a plain DISTINCT would read the number of every entry. */
    private static final String CHAINS = """
            WITH RECURSIVE name (chain) AS (
                SELECT MIN(chain) FROM entry
                UNION ALL
                SELECT (SELECT MIN(entry.chain) FROM entry WHERE entry.chain > name.chain)
                FROM name WHERE name.chain IS NOT NULL)
            SELECT chain FROM name WHERE chain IS NOT NULL ORDER BY chain""";

    private final Jdbi database;
    private final Dialect dialect;
    private final String chain;
    private final SigningKey key;
    private final Clock clock;
    private final Runnable closing;

    /**
     * A store whose tables are there.
     *
     * @param chain the chain that its own entries join
     * @param key with which they are signed
     * @param clock says when they are put on record
     * @param closing ends the connections
     */
    SqlRecordStore(Jdbi database, Dialect dialect, String chain, SigningKey key, Clock clock, Runnable closing) {
        this.database = database;
        this.dialect = dialect;
        this.chain = chain;
        this.key = key;
        this.clock = clock;
        this.closing = closing;
    }

    @Override
    public List<Entry> append(List<Draft> drafts) throws StoreException {
        if (drafts.isEmpty()) {
            return List.of();
        }
        String others = drafts.size() == 1 ? "" : " and %d more".formatted(drafts.size() - 1);
        return writing("put %s%s on record".formatted(drafts.get(0).id(), others), handle -> {
            lock(handle, chain);
            Optional<Entry> last = last(handle, chain);
            if (last.isPresent()) {
                refuseToFollow(last.get());
            }
            List<Entry> entries = new ArrayList<>();
            for (Draft draft : drafts) {
                last = Optional.of(append(handle, draft, last));
                entries.add(last.get());
            }
            return entries;
        });
    }

    private Entry append(Handle handle, Draft draft, Optional<Entry> last) throws StoreException {
        refuseTaken(handle, draft.id());
        if (draft.amends().isPresent()) {
            requireThere(handle, draft.amends().get().id());
        }
        Entry entry = entry(draft, last);
        attach(handle, draft.attachments());
        insert(handle, List.of(entry));
        return entry;
    }

    /** A signature vouches for all entries before it. An entry that was put there without this store's key is never followed. */
    private void refuseToFollow(Entry last) throws StoreException {
        boolean own = last.seal().key().equals(key.open().digest());
        if (own && !key.open().signed(last.header(), last.seal().signature())) {
            throw new StoreException(
                    Reason.NOTHING_TO_FOLLOW,
                    "entry %d of %s was changed or put there by another hand, so nothing can follow it. Nothing was put on record; run an audit, and go on in a new chain."
                            .formatted(last.number(), chain));
        }
    }

    private Entry entry(Draft draft, Optional<Entry> last) {
        Entry unsigned = new Entry(
                chain,
                last.map(Entry::number).orElse(0L) + 1,
                draft.kind(),
                draft.id(),
                draft.at(),
                entered(last),
                last.map(Entry::digest).orElse(Digest.NOTHING),
                new String(CanonicalJson.of(draft.content()), StandardCharsets.UTF_8),
                draft.attachments().stream().map(Digest::of).toList(),
                draft.amends(),
                draft.finder(),
                new Entry.Seal(key.open().digest(), ""));
        return unsigned.sealed(key);
    }

    /** A clock that was set back does not go back in a chain, so whatever does was not put there by this program. */
    private Instant entered(Optional<Entry> last) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        return last.map(Entry::entered).filter(before -> before.isAfter(now)).orElse(now);
    }

    @Override
    public int take(List<Foreign> entries) throws StoreException {
        return writing("take entries of another store", handle -> {
            Map<String, Optional<Head>> heads = new HashMap<>();
            List<Entry> taken = new ArrayList<>();
            for (Foreign foreign : entries) {
                String name = foreign.entry().chain();
                if (!heads.containsKey(name)) {
                    lock(handle, name);
                    heads.put(name, head(handle, name));
                }
                if (isNew(handle, foreign, heads.get(name))) {
                    attach(handle, foreign.attachments());
                    taken.add(foreign.entry());
                    heads.put(name, Optional.of(Head.of(foreign.entry())));
                }
            }
            insert(handle, taken);
            return taken.size();
        });
    }

    private static boolean isNew(Handle handle, Foreign foreign, Optional<Head> head) throws StoreException {
        Entry entry = foreign.entry();
        long number = head.map(Head::number).orElse(0L);
        if (entry.number() <= number) {
            requireSame(handle, entry);
            return false;
        }
        Digest last = head.map(Head::digest).orElse(Digest.NOTHING);
        if (entry.number() != number + 1 || !entry.prior().equals(last)) {
            throw new StoreException(
                    Reason.NOTHING_TO_FOLLOW,
                    "entry %d of %s does not follow what is here of that chain. Nothing was taken; export that stand again, from its first entry on."
                            .formatted(entry.number(), entry.chain()));
        }
        if (!foreign.attachments().stream().map(Digest::of).toList().equals(entry.attachments())) {
            throw new StoreException(
                    Reason.NOTHING_TO_FOLLOW,
                    "what comes beside entry %d of %s is not what the entry names. Nothing was taken; export that stand again."
                            .formatted(entry.number(), entry.chain()));
        }
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

    /** Until this transaction ends no other writer of the chain gets past here. SQLite has one writer at a time anyway. */
    private void lock(Handle handle, String name) {
        if (dialect == Dialect.POSTGRESQL) {
            handle.createQuery("SELECT 1 FROM (SELECT pg_advisory_xact_lock(hashtextextended(:name, 0))) AS locked")
                    .bind("name", name)
                    .mapTo(Integer.class)
                    .one();
        }
    }

    private static Optional<Entry> last(Handle handle, String name) {
        return handle.createQuery("SELECT * FROM entry WHERE chain = :chain ORDER BY number DESC LIMIT 1")
                .bind("chain", name)
                .map((row, context) -> EntryRow.entry(row))
                .findOne();
    }

    private static Optional<Head> head(Handle handle, String name) {
        return last(handle, name).map(Head::of);
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

    private static void insert(Handle handle, List<Entry> entries) {
        if (entries.isEmpty()) {
            return;
        }
        Set<String> columns = EntryRow.of(entries.get(0)).keySet();
        String values = columns.stream().map(column -> ":" + column).collect(Collectors.joining(", "));
        try (PreparedBatch batch =
                handle.prepareBatch("INSERT INTO entry (" + String.join(", ", columns) + ") VALUES (" + values + ")")) {
            for (Entry entry : entries) {
                batch.bindMap(EntryRow.of(entry)).add();
            }
            batch.execute();
        }
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
        return reading("search", handle -> new EntrySearch(handle, search, dialect).newest());
    }

    @Override
    public List<Entry> ofClaim(String claim) throws StoreException {
        return reading(
                "look for claim " + claim,
                handle -> handle.createQuery(
                                "SELECT * FROM entry WHERE search_claim = :claim ORDER BY search_at, number, chain")
                        .bind("claim", EntryRow.plain(claim))
                        .map((row, context) -> EntryRow.entry(row))
                        .list());
    }

    @Override
    public void eachOfClaims(Set<EntryKind> kinds, Consumer<Entry> found) throws StoreException {
        List<String> words = kinds.stream().map(EntryKind::word).sorted().toList();
        reading("read the claims", handle -> {
            Query query = handle.createQuery(
                            "SELECT * FROM entry WHERE search_claim IS NOT NULL AND kind IN (<kinds>) ORDER BY search_claim, search_at, number")
                    .bindList("kinds", words)
                    .setFetchSize(FETCHED_AT_ONCE);
            stream(query, row -> found.accept(EntryRow.entry(row)));
            return words;
        });
    }

    @Override
    public List<Entry> amendments(String id) throws StoreException {
        return reading(
                "look for amendments",
                handle -> handle.createQuery("SELECT * FROM entry WHERE amends = :id ORDER BY search_at, number")
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
                handle -> handle.createQuery(CHAINS).mapTo(String.class).list());
    }

    @Override
    public void each(String name, Consumer<Kept> kept) throws StoreException {
        reading("read a chain", handle -> {
            Query query = handle.createQuery("SELECT * FROM entry WHERE chain = :chain ORDER BY number")
                    .bind("chain", name)
                    .setFetchSize(FETCHED_AT_ONCE);
            stream(query, row -> kept.accept(EntryRow.kept(row)));
            return name;
        });
    }

    @Override
    public void eachAttachment(BiConsumer<String, byte[]> kept) throws StoreException {
        reading("read what belongs to entries", handle -> {
            Query query =
                    handle.createQuery("SELECT sha256, bytes FROM attachment").setFetchSize(ATTACHMENTS_AT_ONCE);
            stream(query, row -> kept.accept(row.getString("sha256"), row.getBytes("bytes")));
            return dialect;
        });
    }

    /** What is done with a row. */
    private interface WithRow {
        void does(ResultSet row) throws SQLException;
    }

    private void stream(Query query, WithRow with) {
        // PostgreSQL sends rows bit by bit only within a transaction; in SQLite one would keep writers waiting.
        if (dialect == Dialect.POSTGRESQL) {
            query.getHandle().begin();
        }
        try {
            query.scanResultSet((supplier, context) -> {
                try (ResultSet rows = supplier.get()) {
                    while (rows.next()) {
                        with.does(rows);
                    }
                    return dialect;
                }
            });
        } finally {
            if (dialect == Dialect.POSTGRESQL) {
                query.getHandle().rollback();
            }
        }
    }

    @Override
    public List<String> damage() throws StoreException {
        return reading("look for damage", handle -> {
            try {
                return new DamageSearch(handle, dialect).damage();
            } catch (SQLException e) {
                throw new StoreException(Reason.STORE_FAILED, "could not look for damage: " + e.getMessage(), e);
            }
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

    private StoreException failed(String doing, JdbiException e) {
        Throwable last = e;
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            last = cause;
            if (cause instanceof SQLException sql && dialect.isDoubled(sql)) {
                return new StoreException(
                        Reason.ID_TAKEN,
                        "could not %s: an entry with that id is on record already. Nothing was changed; amend it instead."
                                .formatted(doing),
                        e);
            }
        }
        return new StoreException(
                Reason.STORE_FAILED,
                "could not %s: %s. Nothing was half done; check that the disk is not full and the database is there."
                        .formatted(
                                doing,
                                String.valueOf(last.getMessage())
                                        .lines()
                                        .findFirst()
                                        .orElse("")),
                e);
    }
}
