package org.pumpwright.host.report.sheet;

import java.util.List;
import org.pumpwright.host.report.draw.Tag;

/** The plain blocks that papers are made of. Thread-safe. */
public final class Blocks {
    /** An empty box that a person ticks. */
    private static final String BOX = "☐ ";

    private Blocks() {}

    /** A heading of a part of the sheet. */
    public static Tag heading(String words) {
        return Tag.withText("h2", words);
    }

    /** A paragraph. */
    public static Tag words(String styleClass, String words) {
        return Tag.withText("p", words).set("class", styleClass);
    }

    /** A list of points. */
    public static Tag points(String styleClass, List<String> points) {
        return list(styleClass, points, "");
    }

    /** A list of things to do, each with a box to tick. */
    public static Tag ticks(List<String> points) {
        return list("ticks", points, BOX);
    }

    private static Tag list(String styleClass, List<String> points, String before) {
        Tag list = Tag.of("ul", styleClass);
        points.forEach(point -> list.add(Tag.withText("li", before + point)));
        return list;
    }

    /** Blocks side by side. */
    public static Tag beside(String styleClass, Tag left, Tag right) {
        return Tag.of("table", "beside " + styleClass)
                .add(Tag.of("tr")
                        .add(
                                Tag.of("td", "left").add(left),
                                Tag.of("td", "right").add(right)));
    }

    /** Lines that a person writes on, side by side. */
    public static Tag lines(List<String> names) {
        Tag row = Tag.of("tr");
        names.forEach(name -> row.add(Tag.withText("td", name)));
        return Tag.of("table", "lines").add(row);
    }

    /**
     * A table of figures.
     *
     * @param wordColumns how many of the first columns hold words, which stand to the left
     * @param columns their names
     * @param body its rows
     */
    public static Tag table(int wordColumns, List<String> columns, Tag body) {
        Tag row = Tag.of("tr");
        for (int i = 0; i < columns.size(); i++) {
            row.add(Tag.withText("th", columns.get(i)).set("class", i < wordColumns ? "words" : "figure-cell"));
        }
        return Tag.of("table", "rows").add(Tag.of("thead").add(row), body);
    }

    /** A cell of a table of figures. */
    public static Tag cell(String styleClass, String text) {
        return Tag.withText("td", text).set("class", styleClass);
    }
}
