package org.pumpwright.host.record.sql;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Draft.Amendment;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Finder;
import org.pumpwright.host.record.ledger.RecordStore;

/** An entry as a row of the table, and back. Thread-safe. */
final class EntryRow {
    /** The shop's own date and time, of one width so that texts sort as times do. */
    private static final DateTimeFormatter SHOP_TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS", Locale.ROOT);

    private EntryRow() {}

    /** All columns by name, those for searches included. */
    static Map<String, @Nullable Object> of(Entry entry) {
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("chain", entry.chain());
        row.put("number", entry.number());
        row.put("kind", entry.kind().word());
        row.put("id", entry.id());
        row.putAll(searched(entry));
        row.put("happened_at", entry.at().toString());
        row.put("entered_at", entry.entered().toString());
        row.put("prior_sha256", entry.prior().hex());
        row.put("key_sha256", entry.seal().key().hex());
        row.put("signature", entry.seal().signature());
        row.put(
                "attachments_sha256",
                entry.attachments().stream().map(Digest::hex).collect(Collectors.joining(" ")));
        row.put("amends", entry.amends().map(Amendment::id).orElse(null));
        row.put("amends_because", entry.amends().map(Amendment::reason).orElse(null));
        row.put("finder", entry.finder().json());
        row.put("content", entry.content());
        return row;
    }

    /** What searches look at: small letters, so that nobody has to remember which are large. */
    private static Map<String, @Nullable Object> searched(Entry entry) {
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        Finder finder = entry.finder();
        row.put("search_at", SHOP_TIME.format(entry.at()));
        row.put("search_serial", finder.serial().map(EntryRow::plain).orElse(null));
        row.put("search_customer", finder.customer().map(EntryRow::plain).orElse(null));
        row.put("search_claim", finder.claim().map(EntryRow::plain).orElse(null));
        row.put("search_model", finder.model().map(EntryRow::plain).orElse(null));
        row.put("search_verdict", finder.verdict().map(EntryRow::plain).orElse(null));
        row.put(
                "search_words",
                plain(String.join(
                        " ",
                        entry.id(),
                        finder.serial().orElse(""),
                        finder.customer().orElse(""),
                        finder.claim().orElse(""),
                        finder.model().orElse(""),
                        finder.words())));
        return row;
    }

    /** How a word is written for searches. */
    static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }

    /** The row for an audit, which must go on whatever it finds. */
    static RecordStore.Kept kept(ResultSet row) throws SQLException {
        long number = row.getLong("number");
        Entry entry;
        try {
            entry = entry(row);
        } catch (IllegalArgumentException | DateTimeException e) {
            return new RecordStore.Kept(number, Optional.empty(), Optional.of("cannot be read: " + e.getMessage()));
        }
        return new RecordStore.Kept(number, Optional.of(entry), otherThanWritten(entry, row));
    }

    /**
     * Finds a column that is not what this program would have written for the entry: search words that are not its own, or
     * another way to write the same, which no digest would show.
     */
    private static Optional<String> otherThanWritten(Entry entry, ResultSet row) throws SQLException {
        for (Map.Entry<String, @Nullable Object> column : of(entry).entrySet()) {
            Object written = column.getValue();
            if (!Objects.equals(written == null ? null : written.toString(), row.getString(column.getKey()))) {
                return Optional.of(
                        column.getKey().startsWith("search_")
                                ? "is found by other words than its own: " + column.getKey()
                                : "is not written as this program writes it: " + column.getKey());
            }
        }
        return Optional.empty();
    }

    static Entry entry(ResultSet row) throws SQLException {
        return new Entry(
                row.getString("chain"),
                row.getLong("number"),
                kind(row.getString("kind")),
                row.getString("id"),
                OffsetDateTime.parse(row.getString("happened_at")),
                Instant.parse(row.getString("entered_at")),
                new Digest(row.getString("prior_sha256")),
                row.getString("content"),
                digests(row.getString("attachments_sha256")),
                amendment(row.getString("amends"), row.getString("amends_because")),
                Finder.ofJson(row.getString("finder")),
                new Entry.Seal(new Digest(row.getString("key_sha256")), row.getString("signature")));
    }

    private static EntryKind kind(String word) {
        return EntryKind.ofWord(word)
                .orElseThrow(() -> new IllegalArgumentException("there is no kind of entry '%s'".formatted(word)));
    }

    private static List<Digest> digests(String hex) {
        return hex.isEmpty()
                ? List.of()
                : Arrays.stream(hex.split(" ")).map(Digest::new).toList();
    }

    private static Optional<Amendment> amendment(@Nullable String id, @Nullable String reason) {
        return id == null || reason == null ? Optional.empty() : Optional.of(new Amendment(id, reason));
    }
}
