package org.pumpwright.host.record.sql;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;

/** Asks a database what is wrong with itself. Confined to one thread. */
final class DamageSearch {
    private static final int GUARDS_SQLITE = 5;
    private static final int GUARDS_POSTGRESQL = 2;

    private final Handle handle;
    private final Dialect dialect;

    DamageSearch(Handle handle, Dialect dialect) {
        this.handle = handle;
        this.dialect = dialect;
    }

    /** The index of words is left out where nothing may be written, for SQLite counts its own check as writing. */
    List<String> damage() throws SQLException {
        List<String> found = new ArrayList<>();
        if (dialect == Dialect.SQLITE && !handle.getConnection().isReadOnly()) {
            words(found);
        }
        guards(found);
        return found;
    }

    /** Compares the index of words with the rows it is made from; with rank 0 SQLite would look at the index alone. */
    private void words(List<String> found) {
        try {
            handle.execute("INSERT INTO entry_words (entry_words, rank) VALUES ('integrity-check', 1)");
        } catch (JdbiException e) {
            found.add("the index of words does not fit the entries: "
                    + String.valueOf(e.getMessage()).lines().findFirst().orElse(""));
        }
    }

    private void guards(List<String> found) {
        int there = handle.createQuery(
                        dialect == Dialect.SQLITE
                                ? "SELECT COUNT(*) FROM sqlite_master WHERE type = 'trigger' AND name LIKE 'entry%' OR type = 'trigger' AND name LIKE 'attachment%'"
                                : "SELECT COUNT(*) FROM pg_trigger WHERE tgname IN ('entry_no_change', 'attachment_no_change') AND tgenabled = 'O' AND tgrelid IN ('entry'::regclass, 'attachment'::regclass)")
                .mapTo(Integer.class)
                .one();
        int wanted = dialect == Dialect.SQLITE ? GUARDS_SQLITE : GUARDS_POSTGRESQL;
        if (there != wanted) {
            found.add("%d of the %d guards against change are gone: somebody took them away"
                    .formatted(wanted - there, wanted));
        }
    }
}
