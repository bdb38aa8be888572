package org.pumpwright.host.record.sql;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
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
    private static final List<String> SEARCHED = List.of(
            "search_serial",
            "search_customer",
            "search_claim",
            "search_model",
            "search_verdict",
            "search_day",
            "search_words");

    private EntryRow() {}

    /** The columns by name, those for searches included. */
    static Map<String, Object> of(Entry entry) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("chain", entry.chain());
        row.put("number", entry.number());
        row.put("kind", entry.kind().word());
        row.put("id", entry.id());
        row.put("happened_at", entry.at().toString());
        row.put("prior_sha256", entry.prior().hex());
        row.put("content", entry.content());
        row.put(
                "attachments_sha256",
                entry.attachments().stream().map(Digest::hex).collect(Collectors.joining(" ")));
        entry.amends().ifPresent(amends -> {
            row.put("amends", amends.id());
            row.put("amends_because", amends.reason());
        });
        row.put("finder", entry.finder().json());
        row.put("key_sha256", entry.seal().key().hex());
        row.put("signature", entry.seal().signature());
        row.putAll(searched(entry));
        return row;
    }

    /** What searches look at: small letters, so that nobody has to remember which are large. */
    private static Map<String, Object> searched(Entry entry) {
        Map<String, Object> row = new LinkedHashMap<>();
        Finder finder = entry.finder();
        finder.serial().ifPresent(serial -> row.put("search_serial", plain(serial)));
        finder.customer().ifPresent(customer -> row.put("search_customer", plain(customer)));
        finder.claim().ifPresent(claim -> row.put("search_claim", plain(claim)));
        finder.model().ifPresent(model -> row.put("search_model", plain(model)));
        finder.verdict().ifPresent(verdict -> row.put("search_verdict", plain(verdict)));
        row.put("search_day", entry.at().toLocalDate().toString());
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
        Map<String, Object> searched = searched(entry);
        for (String column : SEARCHED) {
            if (!Objects.equals(searched.get(column), row.getString(column))) {
                return new RecordStore.Kept(
                        number, Optional.of(entry), Optional.of("is found by other words than its own: " + column));
            }
        }
        return new RecordStore.Kept(number, Optional.of(entry), Optional.empty());
    }

    static Entry entry(ResultSet row) throws SQLException {
        return new Entry(
                row.getString("chain"),
                row.getLong("number"),
                kind(row.getString("kind")),
                row.getString("id"),
                OffsetDateTime.parse(row.getString("happened_at")),
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
