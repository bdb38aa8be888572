package org.pumpwright.host.record.sql;

import java.sql.SQLException;
import java.util.Map;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Where the two databases differ. Thread-safe. */
enum Dialect {
    SQLITE(
            "sqlite",
            // The index of words knows a row by this number.
            "place INTEGER PRIMARY KEY,",
            "TEXT",
            "BLOB",
            "instr(search_words, :words) > 0",
            "place IN (SELECT rowid FROM entry_words WHERE entry_words MATCH :match)"),
    POSTGRESQL(
            "postgresql",
            "",
            // Ranges of beginnings need the order of the bytes, not that of a language.
            "TEXT COLLATE \"C\"",
            "BYTEA",
            "position(:words IN search_words) > 0",
            "search_words LIKE :match");

    /** PostgreSQL, appendix A: unique_violation. */
    private static final String UNIQUE_VIOLATION = "23505";

    private final String folder;
    private final String place;
    private final String text;
    private final String bytes;
    private final String contains;
    private final String matches;

    Dialect(String folder, String place, String text, String bytes, String contains, String matches) {
        this.folder = folder;
        this.place = place;
        this.text = text;
        this.bytes = bytes;
        this.contains = contains;
        this.matches = matches;
    }

    /** Folder of the migrations that only this database has. */
    String folder() {
        return folder;
    }

    /** Words of the migrations that both have. */
    Map<String, String> placeholders() {
        return Map.of("place", place, "text", text, "bytes", bytes);
    }

    /** Where rows are taken from by one index. PostgreSQL chooses itself, from what it knows of the values. */
    String entryBy(String index) {
        return this == SQLITE ? "entry INDEXED BY " + index : "entry";
    }

    /** Ends a query within a query whose rows are all to be found before they are sorted. */
    String allFirst() {
        return this == SQLITE ? "" : " OFFSET 0";
    }

    /** The condition for words that stand anywhere, looked for row by row. */
    String contains() {
        return contains;
    }

    /** The same, looked for in the index of words. */
    String matches() {
        return matches;
    }

    /** What {@link #matches} is given for these words. */
    String match(String words) {
        return switch (this) {
            case SQLITE -> '"' + words.replace("\"", "\"\"") + '"';
            case POSTGRESQL ->
                '%' + words.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + '%';
        };
    }

    /** Whether a statement failed because its id is there already. */
    boolean isDoubled(SQLException e) {
        return this == SQLITE
                ? e instanceof SQLiteException sqlite
                        && sqlite.getResultCode() == SQLiteErrorCode.SQLITE_CONSTRAINT_UNIQUE
                : UNIQUE_VIOLATION.equals(e.getSQLState());
    }
}
