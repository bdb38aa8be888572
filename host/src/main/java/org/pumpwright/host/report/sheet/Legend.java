package org.pumpwright.host.report.sheet;

import org.pumpwright.host.report.draw.Tag;

/** What lines and shapes of a chart mean, drawn with the same styles. Confined to one thread. */
public final class Legend {
    private static final int WIDTH = 30;
    private static final int HEIGHT = 14;

    private final Tag row = Tag.of("tr");

    /** One more line or shape, drawn within 30 by 14 units, with its words. */
    public Legend add(String words, Tag... shapes) {
        Tag key = Tag.of("svg")
                .set("viewBox", "0 0 30 14")
                .set("aria-hidden", "true")
                .add(shapes);
        row.add(Tag.of("td", "key").add(SheetPage.drawing(key, WIDTH, HEIGHT)), Tag.withText("td", words));
        return this;
    }

    /** A line over the whole width. */
    public static Tag line(String styleClass) {
        return Tag.of("polyline", styleClass).set("points", "0,7 30,7");
    }

    /** A piece of a band. */
    public static Tag band() {
        return Tag.of("rect", "band").set("x", 1).set("y", 2).set("width", 28).set("height", 10);
    }

    /** The legend as it stands. */
    public Tag draw() {
        return Tag.of("table", "legend").add(row);
    }
}
