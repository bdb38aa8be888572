package org.pumpwright.host.record.sql;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.record.ledger.Search;

/** The queries a search may need. Beginnings are looked for by range, which an index serves. Confined to one thread. */
final class SearchSql {
    /** Entries that may be gone through one by one. */
    static final int FEW = 4000;

    private static final String ORDER = " ORDER BY search_at DESC, number DESC";

    private final Dialect dialect;
    private final List<String> conditions = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final Map<String, Object> values = new LinkedHashMap<>();
    private final String most;
    private String ordered = "entry_by_time";

    /**
     * A part of a search that an index serves.
     *
     * @param index that serves it
     * @param condition for it alone
     */
    record Part(String index, String condition) {}

    SearchSql(Search search, Dialect dialect) {
        this.dialect = dialect;
        most = " LIMIT " + search.most();
        search.kind().ifPresent(kind -> equal("kind", "kind", kind.word()));
        search.model().ifPresent(model -> equal("model", "search_model", EntryRow.plain(model)));
        search.verdict().ifPresent(verdict -> equal("verdict", "search_verdict", EntryRow.plain(verdict)));
        begins("serial", search.serial());
        begins("customer", search.customer());
        begins("claim", search.claim());
        search.from().ifPresent(day -> condition("search_at >= :from", "from", day.toString()));
        search.to()
                .ifPresent(day -> condition(
                        "search_at < :before", "before", day.plusDays(1).toString()));
        search.contains().map(EntryRow::plain).ifPresent(words -> {
            values.put("words", words);
            values.put("match", dialect.match(words));
        });
    }

    /** The parts of which one may leave only a few entries. */
    List<Part> parts() {
        return parts;
    }

    /** How many entries hold one part, counted no further than {@link #FEW}. */
    String count(Part part) {
        return "SELECT COUNT(*) FROM (SELECT 1 FROM %s WHERE %s LIMIT %d) AS counted"
                .formatted(dialect.entryBy(part.index()), part.condition(), FEW);
    }

    /** How many entries hold the words, counted no further than {@link #FEW}; SQLite's index gives them one by one. */
    String countWords() {
        return "SELECT COUNT(*) FROM (SELECT rowid FROM entry_words WHERE entry_words MATCH :match LIMIT %d) AS counted"
                .formatted(FEW);
    }

    /** All that is asked for, where one part leaves only a few. */
    String through(Part part) {
        return newestOf(dialect.entryBy(part.index()), withWords(dialect.contains()));
    }

    /** All that is asked for, in order: stops as soon as there are enough. */
    String inOrder() {
        return byId("SELECT id FROM " + dialect.entryBy(ordered) + where(withWords(dialect.contains())) + ORDER + most);
    }

    /** All that is asked for, but only among the newest few that hold the rest. */
    String amongNewest(int window) {
        return byId("SELECT id FROM (SELECT id, search_at, number, search_words FROM "
                + dialect.entryBy(ordered) + where(conditions) + ORDER + " LIMIT " + window + ") AS newest WHERE "
                + dialect.contains() + ORDER + most);
    }

    /** All that is asked for, by the index of words. */
    String byWords() {
        return newestOf("entry", withWords(dialect.matches()));
    }

    Map<String, Object> values() {
        return values;
    }

    private String newestOf(String from, List<String> all) {
        return byId("SELECT id FROM (SELECT id, search_at, number FROM " + from + where(all) + dialect.allFirst()
                + ") AS found" + ORDER + most);
    }

    /** Whole rows are read only of those that are shown. */
    private static String byId(String ids) {
        return "SELECT * FROM entry WHERE id IN (" + ids + ")" + ORDER;
    }

    private List<String> withWords(String condition) {
        List<String> all = new ArrayList<>(conditions);
        if (values.containsKey("words")) {
            all.add(condition);
        }
        return all;
    }

    private static String where(List<String> all) {
        return all.isEmpty() ? "" : " WHERE " + String.join(" AND ", all);
    }

    private void begins(String name, Optional<String> beginning) {
        String column = "search_" + name;
        beginning.map(EntryRow::plain).filter(text -> !text.isEmpty()).ifPresent(text -> {
            values.put(name + "_from", text);
            values.put(name + "_to", text + Character.MAX_VALUE);
            part(name, "%s >= :%s_from AND %s < :%s_to".formatted(column, name, column, name));
        });
    }

    private void equal(String name, String column, String value) {
        values.put(name, value);
        part(name, "%s = :%s".formatted(column, name));
        ordered = "entry_by_" + name;
    }

    private void part(String name, String condition) {
        parts.add(new Part("entry_by_" + name, condition));
        conditions.add(condition);
    }

    private void condition(String sql, String name, Object value) {
        conditions.add(sql);
        values.put(name, value);
    }
}
