package org.pumpwright.host.record.sql;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.Search;

/**
 * Finds entries fast whatever is asked for. A part that leaves only a few is looked up first and its entries are sorted; else
 * there are so many that going through all in their order soon meets enough. Confined to one thread.
 */
final class EntrySearch {
    private static final int WINDOW = 500;

    private final Handle handle;
    private final Search search;
    private final Dialect dialect;
    private final SearchSql sql;

    EntrySearch(Handle handle, Search search, Dialect dialect) {
        this.handle = handle;
        this.search = search;
        this.dialect = dialect;
        sql = new SearchSql(search, dialect);
    }

    List<Entry> newest() {
        Optional<SearchSql.Part> few = narrow();
        if (few.isPresent()) {
            return entries(sql.through(few.get()));
        }
        return search.contains().isEmpty() ? entries(sql.inOrder()) : withWords();
    }

    /** Common words soon show among the newest. PostgreSQL's index finds all entries with some words or none, so look longer. */
    private List<Entry> withWords() {
        boolean oneByOne = dialect == Dialect.SQLITE;
        List<Entry> newest = entries(sql.amongNewest(oneByOne ? WINDOW : SearchSql.FEW));
        if (newest.size() == search.most()) {
            return newest;
        }
        boolean many = oneByOne && count(sql.countWords()) == SearchSql.FEW;
        return entries(many ? sql.inOrder() : sql.byWords());
    }

    private Optional<SearchSql.Part> narrow() {
        SearchSql.Part narrowest = null;
        int least = SearchSql.FEW;
        for (SearchSql.Part part : sql.parts()) {
            int count = count(sql.count(part));
            if (count < least) {
                least = count;
                narrowest = part;
            }
        }
        return Optional.ofNullable(narrowest);
    }

    private int count(String query) {
        return handle.createQuery(query)
                .bindMap(sql.values())
                .mapTo(Integer.class)
                .one();
    }

    private List<Entry> entries(String query) {
        return handle.createQuery(query)
                .bindMap(sql.values())
                .map((row, context) -> EntryRow.entry(row))
                .list();
    }
}
