package org.pumpwright.host.record.sql;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.record.ledger.Search;

/** A search as SQL. Beginnings are looked for by range, which an index serves. Confined to one thread. */
final class SearchSql {
    private final List<String> conditions = new ArrayList<>();
    private final Map<String, Object> values = new LinkedHashMap<>();
    private final int most;

    SearchSql(Search search, Dialect dialect) {
        most = search.most();
        search.kind().ifPresent(kind -> equal("kind", kind.word()));
        begins("search_serial", search.serial());
        begins("search_customer", search.customer());
        begins("search_claim", search.claim());
        search.model().ifPresent(model -> equal("search_model", EntryRow.plain(model)));
        search.verdict().ifPresent(verdict -> equal("search_verdict", EntryRow.plain(verdict)));
        search.from().ifPresent(day -> condition("search_day >= :from", "from", day.toString()));
        search.to().ifPresent(day -> condition("search_day <= :to", "to", day.toString()));
        search.contains()
                .ifPresent(
                        words -> condition(dialect.contains(), "contains", dialect.containing(EntryRow.plain(words))));
    }

    String sql() {
        String where = conditions.isEmpty() ? "" : " WHERE " + String.join(" AND ", conditions);
        return "SELECT * FROM entry" + where + " ORDER BY place DESC LIMIT " + most;
    }

    Map<String, Object> values() {
        return values;
    }

    private void begins(String column, Optional<String> beginning) {
        beginning.map(EntryRow::plain).filter(text -> !text.isEmpty()).ifPresent(text -> {
            condition("%s >= :%s_from".formatted(column, column), column + "_from", text);
            condition("%s < :%s_to".formatted(column, column), column + "_to", text + Character.MAX_VALUE);
        });
    }

    private void equal(String column, String value) {
        condition("%s = :%s".formatted(column, column), column, value);
    }

    private void condition(String sql, String name, Object value) {
        conditions.add(sql);
        values.put(name, value);
    }
}
