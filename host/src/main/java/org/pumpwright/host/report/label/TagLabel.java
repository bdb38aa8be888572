package org.pumpwright.host.report.label;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.VerdictMark;
import org.pumpwright.host.report.draw.BarCode;
import org.pumpwright.host.report.draw.SquareCode;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Texts;

/**
 * The label tied to a unit, 90 mm by 50 mm and all in black, alone for a label printer or ten on a sheet of Letter or A4. The
 * bars hold the serial number where they can, else the number of the test. Thread-safe.
 */
public final class TagLabel {
    /** Labels that go on one sheet. */
    public static final int ON_A_SHEET = 10;

    private static final String STYLE = load();
    private static final int LONGEST_SERIAL = 24;
    private static final int LONG_WORD = 6;
    private static final int BAR_HEIGHT = 40;

    private TagLabel() {}

    /** The label as a page of its own; write it as UTF-8. */
    public static String html(TagSlip slip, Texts texts) {
        return page("one", List.of(slip), texts);
    }

    /**
     * Labels side by side on one sheet, for scissors or for adhesive sheets.
     *
     * @throws IllegalArgumentException unless there are 1 to {@link #ON_A_SHEET}
     */
    public static String sheet(List<TagSlip> slips, Texts texts) {
        if (slips.isEmpty() || slips.size() > ON_A_SHEET) {
            throw new IllegalArgumentException(
                    "%d labels don't go on one sheet: 1 to %d do".formatted(slips.size(), ON_A_SHEET));
        }
        return page("many own-feet", slips, texts);
    }

    private static String page(String styleClass, List<TagSlip> slips, Texts texts) {
        Tag body = Tag.of("body");
        slips.forEach(slip -> body.add(label(slip, texts)));
        Tag head = Tag.of("head")
                .add(
                        Tag.of("meta").set("charset", "utf-8"),
                        Tag.withText(
                                "title",
                                texts.say("tag_label.title") + " "
                                        + slips.get(0).run().id()),
                        Tag.style(STYLE));
        return "<!DOCTYPE html>\n"
                + Tag.of("html")
                        .set("lang", texts.language().code())
                        .set("class", styleClass)
                        .add(head, body);
    }

    private static Tag label(TagSlip slip, Texts texts) {
        RunRecord run = slip.run();
        Verdict verdict = run.grade().verdict();
        Tag label = Tag.of("div", "label " + VerdictMark.styleClass(verdict))
                .add(
                        SquareCode.draw(slip.code(), "square code"),
                        VerdictMark.draw(verdict),
                        verdict(verdict, texts),
                        words("model", run.subject().modelTitle()),
                        fact(texts.say("tag_label.serial"), given(run.subject().serial(), texts)),
                        fact(texts.say("tag_label.test"), run.id()),
                        fact(
                                texts.say("tag_label.claim"),
                                run.intake().claim().orElse(texts.say("tag_label.not_given"))),
                        fact(texts.say("tag_label.tested"), slip.day()),
                        boxed(texts.say("tag_label.colour." + slip.colour().key())));
        if (slip.hot()) {
            label.add(boxed(texts.say("tag_label.hot")));
        }
        if (slip.corrected()) {
            label.add(words("corrected", texts.say("tag_label.corrected")));
        }
        if (run.subject().practice()) {
            label.add(words("practice", texts.say("tag_label.practice")));
        }
        return label.add(bars(run, texts));
    }

    /** Letters as large as the word leaves room for. */
    private static Tag verdict(Verdict verdict, Texts texts) {
        String word = texts.say("verdict." + verdict.name().toLowerCase(Locale.ROOT));
        return words(word.length() > LONG_WORD ? "verdict long" : "verdict", word);
    }

    private static Tag boxed(String words) {
        return Tag.of("p", "colour").add(Tag.withText("b", words));
    }

    private static Tag bars(RunRecord run, Texts texts) {
        String serial = run.subject().serial();
        boolean fits = BarCode.canHold(serial) && serial.length() <= LONGEST_SERIAL;
        String held = fits ? serial : run.id();
        return Tag.of("div", "bars")
                .add(
                        BarCode.draw(held, BAR_HEIGHT, "bar code"),
                        words("held", texts.say(fits ? "tag_label.serial" : "tag_label.test") + " " + held));
    }

    private static String given(String text, Texts texts) {
        return text.isBlank() ? texts.say("tag_label.not_given") : text;
    }

    private static Tag fact(String name, String value) {
        return Tag.of("p", "fact").add(Tag.withText("span", name)).add(Tag.withText("b", value));
    }

    private static Tag words(String styleClass, String text) {
        return Tag.withText("p", text).set("class", styleClass);
    }

    private static String load() {
        try (InputStream in = TagLabel.class.getResourceAsStream("label.css")) {
            if (in == null) {
                throw new IllegalStateException("the program is not whole: label.css is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
