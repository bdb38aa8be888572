package org.pumpwright.host.cli.record;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.Finder;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Entries as a table for people, and one JSON object a line for programs. Thread-safe. */
final class EntryTable {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final List<String> HEADS =
            List.of("day", "kind", "verdict", "serial", "model", "claim", "customer", "id");

    private EntryTable() {}

    static void print(List<Entry> entries, PrintWriter out) {
        List<List<String>> rows = entries.stream().map(EntryTable::row).toList();
        int[] widths = new int[HEADS.size()];
        for (int c = 0; c < widths.length; c++) {
            widths[c] = HEADS.get(c).length();
            for (List<String> row : rows) {
                widths[c] = Math.max(widths[c], row.get(c).length());
            }
        }
        print(HEADS, widths, rows, out);
        rows.forEach(row -> print(row, widths, rows, out));
    }

    /** A column in which nothing stands is left out. */
    private static void print(List<String> row, int[] widths, List<List<String>> rows, PrintWriter out) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < widths.length; c++) {
            int column = c;
            if (rows.stream().anyMatch(each -> !each.get(column).isEmpty())) {
                line.append(row.get(c)).append(" ".repeat(widths[c] - row.get(c).length() + 2));
            }
        }
        out.println(line.toString().stripTrailing());
    }

    private static List<String> row(Entry entry) {
        Finder finder = entry.finder();
        return List.of(
                entry.at().toLocalDate().toString(),
                entry.kind().word() + (entry.amends().isPresent() ? " (amends)" : ""),
                finder.verdict().orElse("").toUpperCase(Locale.ROOT).replace('-', ' '),
                finder.serial().orElse(""),
                finder.model().orElse(""),
                finder.claim().orElse(""),
                finder.customer().orElse(""),
                entry.id());
    }

    static ObjectNode json(Entry entry) {
        Finder finder = entry.finder();
        ObjectNode node = JSON.createObjectNode()
                .put("id", entry.id())
                .put("kind", entry.kind().word())
                .put("at", entry.at().toString())
                .put("chain", entry.chain())
                .put("number", entry.number());
        finder.serial().ifPresent(serial -> node.put("serial", serial));
        finder.model().ifPresent(model -> node.put("model", model));
        finder.claim().ifPresent(claim -> node.put("claim", claim));
        finder.customer().ifPresent(customer -> node.put("customer", customer));
        finder.verdict().ifPresent(verdict -> node.put("verdict", verdict));
        entry.amends().ifPresent(amends -> node.put("amends", amends.id()).put("amends_because", amends.reason()));
        return node.put("words", finder.words()).put("sha256", entry.digest().hex());
    }
}
