package org.pumpwright.host.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.report.draw.Tag;

/** Names and what they stand for, several pairs in a row. Confined to one thread. */
public final class FactTable {
    private final int pairs;
    private final List<Tag> cells = new ArrayList<>();

    /** An empty table with this many pairs in a row. */
    public FactTable(int pairs) {
        this.pairs = pairs;
    }

    /** One more name with its value. */
    public FactTable add(String name, String value) {
        cells.add(Tag.withText("th", name));
        cells.add(Tag.withText("td", value));
        return this;
    }

    /** One more name whose value is missing and is told so. */
    public FactTable missing(String name, String words) {
        cells.add(Tag.withText("th", name));
        cells.add(Tag.withText("td", words).set("class", "missing"));
        return this;
    }

    /** The table as it stands. */
    public Tag draw() {
        Tag table = Tag.of("table", "facts of-" + pairs);
        int wide = 2 * pairs;
        for (int from = 0; from < cells.size(); from += wide) {
            Tag row = Tag.of("tr").add(cells.subList(from, Math.min(cells.size(), from + wide)));
            for (int blank = cells.size(); blank < from + wide; blank++) {
                row.add(Tag.of("td"));
            }
            table.add(row);
        }
        return table;
    }
}
