package org.pumpwright.host.record.sql;

import java.util.Map;

/** Where the two databases differ. Thread-safe. */
enum Dialect {
    SQLITE(
            "sqlite",
            "INTEGER PRIMARY KEY",
            "TEXT",
            "BLOB",
            "",
            "place IN (SELECT rowid FROM entry_words WHERE entry_words MATCH :contains)"),
    POSTGRESQL(
            "postgresql",
            "BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY",
            // Ranges of beginnings need the order of the bytes, not that of a language.
            "TEXT COLLATE \"C\"",
            "BYTEA",
            " FOR UPDATE",
            "search_words LIKE :contains");

    private final String folder;
    private final String place;
    private final String text;
    private final String bytes;
    private final String lock;
    private final String contains;

    Dialect(String folder, String place, String text, String bytes, String lock, String contains) {
        this.folder = folder;
        this.place = place;
        this.text = text;
        this.bytes = bytes;
        this.lock = lock;
        this.contains = contains;
    }

    /** Folder of the migrations that only this database has. */
    String folder() {
        return folder;
    }

    /** Words of the migrations that both have. */
    Map<String, String> placeholders() {
        return Map.of("place", place, "text", text, "bytes", bytes);
    }

    /** Makes a query lock its rows. SQLite has one writer at a time anyway. */
    String lock() {
        return lock;
    }

    /** The condition for words that stand anywhere. */
    String contains() {
        return contains;
    }

    /** What {@link #contains} is given for these words. */
    String containing(String words) {
        return switch (this) {
            case SQLITE -> '"' + words.replace("\"", "\"\"") + '"';
            case POSTGRESQL ->
                '%' + words.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + '%';
        };
    }
}
