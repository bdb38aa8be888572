package org.pumpwright.host.report.sheet;

import java.util.List;

/** Says on a page that its record was corrected afterwards. Thread-safe. */
public final class Amended {
    private static final List<String> HEAD_LINES = List.of("</header>", "</table>");

    private Amended() {}

    /**
     * A page with these sentences directly below its head line.
     *
     * @param html a page of this program's own
     * @param sentences one for each correction; the page stays as it is without any
     * @throws IllegalArgumentException if the page has no head line
     */
    public static String on(String html, List<String> sentences) {
        if (sentences.isEmpty()) {
            return html;
        }
        StringBuilder block = new StringBuilder();
        sentences.forEach(sentence -> block.append(Blocks.words("amended", sentence)));
        for (String end : HEAD_LINES) {
            int at = html.indexOf(end);
            if (at >= 0) {
                return new StringBuilder(html).insert(at + end.length(), block).toString();
            }
        }
        throw new IllegalArgumentException("the page has no head line to put a correction below");
    }
}
