package org.pumpwright.host.report.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Texts;

/**
 * One paper as a single HTML page with nothing outside the file, for one sheet of Letter or A4. Its style keeps to CSS 2.1, so that
 * a print engine makes the same of it as a browser. Confined to one thread.
 */
public final class SheetPage {
    private static final String STYLE = load("sheet.css") + load("chart.css");

    private final Texts texts;
    private final String title;
    private final Tag body = Tag.of("div", "sheet");

    /**
     * A sheet with nothing but its head line.
     *
     * @param from who it comes from: the shop, or the program where no shop is named
     * @param title what it is
     * @param number by which it is found again; may be empty
     */
    public SheetPage(Texts texts, String from, String title, String number) {
        this.texts = texts;
        this.title = title;
        body.add(Tag.of("table", "head")
                .add(Tag.of("tr")
                        .add(
                                Tag.withText("td", from).set("class", "from"),
                                Tag.withText("td", title).set("class", "title"),
                                Tag.withText("td", number).set("class", "number"))));
    }

    /** Marks the paper as one of an invented or simulated unit, where it is. */
    public SheetPage practice(boolean practice) {
        if (practice) {
            body.add(Tag.withText("p", texts.say("sheet.practice")).set("class", "practice"));
        }
        return this;
    }

    /** Larger letters, for a paper that has little to say. */
    public SheetPage roomy() {
        body.set("class", "sheet roomy");
        return this;
    }

    /** Smaller letters, for a paper that has much to say. */
    public SheetPage dense() {
        body.set("class", "sheet dense");
        return this;
    }

    /** The next blocks, from top to bottom. */
    public SheetPage add(Tag... blocks) {
        body.add(blocks);
        return this;
    }

    /** The next blocks, from top to bottom. */
    public SheetPage add(List<Tag> blocks) {
        body.add(blocks);
        return this;
    }

    /** The whole page; write it as UTF-8. */
    public String html() {
        Tag head = Tag.of("head")
                .add(Tag.of("meta").set("charset", "utf-8"))
                .add(Tag.withText("title", title))
                .add(Tag.style(STYLE));
        return "<!DOCTYPE html>\n"
                + Tag.of("html")
                        .set("lang", texts.language().code())
                        .add(head, Tag.of("body").add(body));
    }

    /**
     * A drawing in its size on the page, which print engines want told.
     *
     * @param svg the drawing; it must have a view box
     * @param width in CSS pixels
     * @param height in CSS pixels
     */
    public static Tag drawing(Tag svg, int width, int height) {
        return svg.set("width", Integer.toString(width)).set("height", Integer.toString(height));
    }

    private static String load(String resource) {
        try (InputStream in = SheetPage.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program is not whole: " + resource + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
