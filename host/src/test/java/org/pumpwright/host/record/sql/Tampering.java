package org.pumpwright.host.record.sql;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.SigningKey;

/**
 * What somebody may do to a database whose guards against change he has taken away. Afterwards the index of words fits the
 * rows again, so that it betrays nothing. What cannot be written, or would change nothing, is told as such.
 */
final class Tampering {
    private static final List<String> COLUMNS = columns();

    private final Connection connection;
    private final Dialect dialect;
    private final SplittableRandom random;

    Tampering(Connection connection, Dialect dialect, SplittableRandom random) {
        this.connection = connection;
        this.dialect = dialect;
        this.random = random;
    }

    /** The ways, each as likely as it is listed. */
    enum Way {
        FLIP_ENTRY,
        FLIP_ENTRY_AGAIN,
        FLIP_ATTACHMENT,
        CHANGE_WORDS,
        REMOVE_ENTRY,
        REMOVE_ATTACHMENT,
        SWAP_NUMBERS,
        SWAP_CONTENTS,
        DOUBLE_ENTRY,
        DATE_BACK_UNSIGNED,
        DATE_BACK_UNTRUSTED,
        CUT_TAIL,
        REPLACE_ATTACHMENT,
        SWAP_ATTACHMENTS,
        ADD_ATTACHMENT,
        OTHER_CHAIN
    }

    private static List<String> columns() {
        return List.of(
                "chain",
                "number",
                "kind",
                "id",
                "search_at",
                "search_serial",
                "search_customer",
                "search_claim",
                "search_model",
                "search_verdict",
                "search_words",
                "happened_at",
                "entered_at",
                "prior_sha256",
                "key_sha256",
                "signature",
                "attachments_sha256",
                "amends",
                "amends_because",
                "finder",
                "content");
    }

    /** Does one; empty when it could not be done, else what was done. */
    Optional<String> one() throws SQLException {
        Way way = Way.values()[random.nextInt(Way.values().length)];
        connection.setAutoCommit(false);
        try {
            Optional<String> done = one(way);
            if (done.isPresent()) {
                if (dialect == Dialect.SQLITE
                        && way != Way.CHANGE_WORDS
                        && !done.get().contains(".place")) {
                    run("INSERT INTO entry_words (entry_words) VALUES ('rebuild')");
                }
                connection.commit();
            } else {
                connection.rollback();
            }
            return done.map(what -> way + ": " + what);
        } catch (SQLException e) {
            connection.rollback();
            return Optional.empty();
        } finally {
            connection.setAutoCommit(true);
        }
    }

    private Optional<String> one(Way way) throws SQLException {
        String row = entry();
        return switch (way) {
            case FLIP_ENTRY, FLIP_ENTRY_AGAIN -> flip("entry", row, entryColumn());
            case FLIP_ATTACHMENT -> flip("attachment", any("attachment"), random.nextBoolean() ? "sha256" : "bytes");
            case CHANGE_WORDS -> dialect == Dialect.SQLITE ? changeWords(row) : Optional.empty();
            case REMOVE_ENTRY -> run("DELETE FROM entry WHERE " + row);
            case REMOVE_ATTACHMENT -> run("DELETE FROM attachment WHERE " + any("attachment"));
            case SWAP_NUMBERS -> swap("number");
            case SWAP_CONTENTS -> swap("content");
            case DOUBLE_ENTRY -> doubled(row);
            case DATE_BACK_UNSIGNED -> dateBack(row, Optional.empty());
            case DATE_BACK_UNTRUSTED -> dateBack(row, Optional.of(SigningKey.generate()));
            case CUT_TAIL -> cutTail();
            case REPLACE_ATTACHMENT -> replaceAttachment();
            case SWAP_ATTACHMENTS -> swapAttachments();
            case ADD_ATTACHMENT -> addAttachment();
            case OTHER_CHAIN -> run("UPDATE entry SET chain = 'stand-3' WHERE " + row);
        };
    }

    private String entryColumn() {
        boolean place = dialect == Dialect.SQLITE && random.nextInt(COLUMNS.size() + 1) == 0;
        return place ? "place" : COLUMNS.get(random.nextInt(COLUMNS.size()));
    }

    private String entry() throws SQLException {
        return any("entry");
    }

    /** A condition that holds for one row only. */
    private String any(String table) throws SQLException {
        String key = dialect == Dialect.SQLITE ? "rowid" : "ctid";
        List<String> rows = texts("SELECT " + key + " FROM " + table + " ORDER BY " + key);
        return key + " = '" + rows.get(random.nextInt(rows.size())) + "'";
    }

    private Optional<String> flip(String table, String row, String column) throws SQLException {
        Object value = value("SELECT " + column + " FROM " + table + " WHERE " + row);
        if (value == null || (value instanceof byte[] bytes && bytes.length == 0) || "".equals(value)) {
            return Optional.empty();
        }
        String where = " WHERE " + row;
        String what = "%s.%s %s".formatted(table, column, row);
        if (value instanceof Number number) {
            set("UPDATE " + table + " SET " + column + " = ?" + where, number.longValue() ^ (1L << random.nextInt(62)));
        } else if (value instanceof byte[] bytes) {
            set("UPDATE " + table + " SET " + column + " = ?" + where, flipped(bytes));
        } else {
            byte[] other = flipped(value.toString().getBytes(StandardCharsets.UTF_8));
            if (dialect == Dialect.SQLITE) {
                set("UPDATE " + table + " SET " + column + " = CAST(? AS TEXT)" + where, other);
            } else {
                Optional<String> text = decoded(other);
                if (text.isEmpty()) {
                    return Optional.empty();
                }
                set("UPDATE " + table + " SET " + column + " = ?" + where, text.get());
            }
        }
        return Optional.of(what);
    }

    /** Makes an entry not to be found by its words, or by those of another. */
    private Optional<String> changeWords(String row) throws SQLException {
        if (random.nextBoolean()) {
            return run(
                    "INSERT INTO entry_words (entry_words, rowid, search_words) SELECT 'delete', rowid, search_words FROM entry WHERE "
                            + row);
        }
        return run("INSERT INTO entry_words (rowid, search_words) SELECT rowid, 'other' FROM entry WHERE " + row);
    }

    private byte[] flipped(byte[] bytes) {
        byte[] other = bytes.clone();
        int bit = random.nextInt(8 * bytes.length);
        other[bit / 8] ^= (byte) (1 << bit % 8);
        return other;
    }

    private static Optional<String> decoded(byte[] bytes) {
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    private Optional<String> swap(String column) throws SQLException {
        String chain = chain();
        List<String> ids = texts("SELECT id FROM entry WHERE chain = '" + chain + "' ORDER BY number");
        String one = ids.get(random.nextInt(ids.size()));
        String other = ids.get(random.nextInt(ids.size()));
        Object first = value("SELECT " + column + " FROM entry WHERE id = '" + one + "'");
        Object second = value("SELECT " + column + " FROM entry WHERE id = '" + other + "'");
        if (first.equals(second)) {
            return Optional.empty();
        }
        set("UPDATE entry SET " + column + " = ? WHERE id = '" + one + "'", first instanceof Number ? -1L : "");
        set("UPDATE entry SET " + column + " = ? WHERE id = '" + other + "'", first);
        set("UPDATE entry SET " + column + " = ? WHERE id = '" + one + "'", second);
        return Optional.of("%s of %s and %s".formatted(column, one, other));
    }

    private Optional<String> doubled(String row) throws SQLException {
        List<String> values = new ArrayList<>(COLUMNS);
        values.set(values.indexOf("id"), "id || 'b'");
        values.set(values.indexOf("search_words"), "id || 'b ' || substr(search_words, length(id) + 2)");
        values.set(
                values.indexOf("number"),
                "(SELECT MAX(number) + 1 FROM entry AS other WHERE other.chain = entry.chain)");
        return run("INSERT INTO entry (" + String.join(", ", COLUMNS) + ") SELECT " + String.join(", ", values)
                + " FROM entry WHERE " + row);
    }

    /** The following entries are made to hold on to the changed one; signed again by another key, or left as they are. */
    private Optional<String> dateBack(String row, Optional<SigningKey> by) throws SQLException {
        Entry first = entries("SELECT * FROM entry WHERE " + row).get(0);
        Entry changed = with(first, first.prior(), Duration.ofDays(30), by);
        write(changed);
        Digest prior = changed.digest();
        for (Entry entry : entries("SELECT * FROM entry WHERE chain = '%s' AND number > %d ORDER BY number"
                .formatted(first.chain(), first.number()))) {
            Entry next = with(entry, prior, Duration.ZERO, by);
            write(next);
            prior = next.digest();
        }
        return Optional.of(first.id());
    }

    private static Entry with(Entry entry, Digest prior, Duration earlier, Optional<SigningKey> by) {
        Entry other = new Entry(
                entry.chain(),
                entry.number(),
                entry.kind(),
                entry.id(),
                entry.at().minus(earlier),
                entry.entered().minus(earlier),
                prior,
                entry.content(),
                entry.attachments(),
                entry.amends(),
                entry.finder(),
                entry.seal());
        return by.map(other::sealed).orElse(other);
    }

    private void write(Entry entry) throws SQLException {
        for (Map.Entry<String, Object> column : new HashMap<>(EntryRow.of(entry)).entrySet()) {
            if (List.of("happened_at", "entered_at", "search_at", "prior_sha256", "key_sha256", "signature")
                    .contains(column.getKey())) {
                set("UPDATE entry SET " + column.getKey() + " = ? WHERE id = '" + entry.id() + "'", column.getValue());
            }
        }
    }

    /** With what belongs beside the entries that are cut off. */
    private Optional<String> cutTail() throws SQLException {
        String chain = chain();
        List<String> ids = texts("SELECT id FROM entry WHERE chain = '" + chain + "' ORDER BY number DESC");
        int cut = random.nextInt(10) == 0 ? ids.size() : 1 + random.nextInt(ids.size());
        for (String id : ids.subList(0, cut)) {
            for (String digest : texts("SELECT attachments_sha256 FROM entry WHERE id = '" + id + "'")
                    .get(0)
                    .split(" ")) {
                run("DELETE FROM attachment WHERE sha256 = '" + digest + "'");
            }
            run("DELETE FROM entry WHERE id = '" + id + "'");
        }
        return Optional.of("%d of %s".formatted(cut, chain));
    }

    private Optional<String> replaceAttachment() throws SQLException {
        byte[] other = new byte[100];
        random.nextBytes(other);
        String row = any("attachment");
        if (random.nextBoolean()) {
            set(
                    "UPDATE attachment SET sha256 = ? WHERE " + row,
                    Digest.of(other).hex());
            row = "sha256 = '" + Digest.of(other).hex() + "'";
        }
        set("UPDATE attachment SET bytes = ? WHERE " + row, other);
        return Optional.of(row);
    }

    private Optional<String> swapAttachments() throws SQLException {
        List<String> keys = texts("SELECT sha256 FROM attachment ORDER BY sha256");
        String one = keys.get(random.nextInt(keys.size()));
        String other = keys.get(random.nextInt(keys.size()));
        Object first = value("SELECT bytes FROM attachment WHERE sha256 = '" + one + "'");
        Object second = value("SELECT bytes FROM attachment WHERE sha256 = '" + other + "'");
        set("UPDATE attachment SET bytes = ? WHERE sha256 = '" + one + "'", second);
        set("UPDATE attachment SET bytes = ? WHERE sha256 = '" + other + "'", first);
        return Arrays.equals((byte[]) first, (byte[]) second) ? Optional.empty() : Optional.of(one + " and " + other);
    }

    private Optional<String> addAttachment() throws SQLException {
        byte[] bytes = new byte[10];
        random.nextBytes(bytes);
        set(
                "INSERT INTO attachment (sha256, bytes) VALUES ('"
                        + Digest.of(bytes).hex() + "', ?)",
                bytes);
        return Optional.of(Digest.of(bytes).hex());
    }

    private String chain() throws SQLException {
        List<String> chains = texts("SELECT DISTINCT chain FROM entry ORDER BY chain");
        return chains.get(random.nextInt(chains.size()));
    }

    private Optional<String> run(String sql) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            return statement.executeUpdate() == 0 ? Optional.empty() : Optional.of(sql);
        }
    }

    private void set(String sql, Object value) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.setObject(1, value);
            statement.executeUpdate();
        }
    }

    private Object value(String sql) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql);
                ResultSet row = statement.executeQuery()) {
            row.next();
            return row.getObject(1);
        }
    }

    private List<String> texts(String sql) throws SQLException {
        List<String> all = new ArrayList<>();
        try (PreparedStatement statement = connection.prepareStatement(sql);
                ResultSet row = statement.executeQuery()) {
            while (row.next()) {
                all.add(row.getString(1));
            }
        }
        return all;
    }

    private List<Entry> entries(String sql) throws SQLException {
        List<Entry> all = new ArrayList<>();
        try (PreparedStatement statement = connection.prepareStatement(sql);
                ResultSet row = statement.executeQuery()) {
            while (row.next()) {
                all.add(EntryRow.entry(row));
            }
        }
        return all;
    }
}
