package org.pumpwright.host.report;

import org.pumpwright.host.report.draw.Tag;

/** Names and what they stand for, as a list of terms. Confined to one thread. */
final class Facts {
    private final Tag list;

    Facts(String styleClass) {
        list = Tag.of("dl", styleClass);
    }

    void add(String name, String value) {
        list.add(Tag.of("div").add(Tag.withText("dt", name), Tag.withText("dd", value)));
    }

    Tag draw() {
        return list;
    }
}
