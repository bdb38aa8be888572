package org.pumpwright.host.report.sheet;

import java.util.List;
import java.util.Locale;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.report.VerdictMark;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Texts;

/** A verdict by shape, by word and by colour. Thread-safe. */
public final class VerdictBlock {
    private VerdictBlock() {}

    /** The verdict in big letters with sentences below. */
    public static Tag big(Verdict verdict, String words, List<String> sentences) {
        Tag cell = Tag.of("td", "words").add(Tag.withText("h1", words));
        sentences.forEach(sentence -> cell.add(Tag.withText("p", sentence)));
        return Tag.of("table", "verdict " + VerdictMark.styleClass(verdict))
                .add(Tag.of("tr").add(Tag.of("td", "sign-cell").add(mark(verdict, 76)), cell));
    }

    /** The verdict of one run and that of the next, with an arrow between. */
    public static Tag change(Tag before, Tag beforeWords, Tag after, Tag afterWords) {
        return Tag.of("table", "turn")
                .add(Tag.of("tr")
                        .add(
                                Tag.of("td", "sign-cell").add(before),
                                Tag.of("td", "words").add(beforeWords),
                                Tag.withText("td", "→").set("class", "arrow"),
                                Tag.of("td", "sign-cell").add(after),
                                Tag.of("td", "words").add(afterWords)));
    }

    /** The sign alone. */
    public static Tag mark(Verdict verdict, int size) {
        Tag svg = VerdictMark.draw(verdict).set("class", "mark " + VerdictMark.styleClass(verdict));
        return SheetPage.drawing(svg, size, size);
    }

    /** The verdict in a word or two. */
    public static String word(Verdict verdict, Texts texts) {
        return texts.say("verdict." + verdict.name().toLowerCase(Locale.ROOT));
    }
}
