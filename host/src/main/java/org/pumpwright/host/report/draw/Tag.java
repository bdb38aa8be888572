package org.pumpwright.host.report.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * One element of HTML or SVG. Text and attribute values only get in escaped, so no serial number can become markup. Confined
 * to one thread.
 */
public final class Tag {
    private static final Set<String> VOID = Set.of("meta");
    /** Elements within a line of text, where a line feed would show as a space. */
    private static final Set<String> INLINE = Set.of("b", "span", "text", "dt", "dd");

    private final String name;
    private final Map<String, String> attributes = new LinkedHashMap<>();
    private final List<Object> children = new ArrayList<>();

    private Tag(String name) {
        this.name = name;
    }

    /** An element. */
    public static Tag of(String name) {
        return new Tag(name);
    }

    /** An element of a style class. */
    public static Tag of(String name, String styleClass) {
        return new Tag(name).set("class", styleClass);
    }

    /** An element around a text. */
    public static Tag withText(String name, String text) {
        return new Tag(name).text(text);
    }

    /** A style sheet of this program's own; the one text that goes in as it is. */
    public static Tag style(String css) {
        Tag tag = new Tag("style");
        tag.children.add(new Raw(css));
        return tag;
    }

    /** One attribute; its value is escaped. */
    public Tag set(String attribute, String value) {
        attributes.put(attribute, value);
        return this;
    }

    /** A coordinate or length, to a tenth. */
    public Tag set(String attribute, double value) {
        return set(attribute, coordinate(value));
    }

    /** Elements within this one. */
    public Tag add(Tag... more) {
        children.addAll(List.of(more));
        return this;
    }

    /** Elements within this one. */
    public Tag add(List<Tag> more) {
        children.addAll(more);
        return this;
    }

    /** Text within this element; it is escaped. */
    public Tag text(String text) {
        children.add(new Raw(escape(text)));
        return this;
    }

    /** A coordinate or length for an attribute, to a tenth. */
    public static String coordinate(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /**
     * Text as HTML and SVG may hold it. Control and direction characters, which could hide or reorder what is printed,
     * become a visible replacement sign.
     */
    public static String escape(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                case '\n', '\t' -> out.append(' ');
                default -> out.appendCodePoint(hidden(c) ? 0xFFFD : c);
            }
        });
        return out.toString();
    }

    private static boolean hidden(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.UNASSIGNED;
    }

    @Override
    public String toString() {
        StringBuilder out = new StringBuilder(1024);
        write(out);
        return out.toString();
    }

    private void write(StringBuilder out) {
        out.append('<').append(name);
        attributes.forEach((key, value) ->
                out.append(' ').append(key).append("=\"").append(escape(value)).append('"'));
        if (VOID.contains(name)) {
            // Closed as XML wants it, which HTML allows: the page can be read as either.
            out.append("/>");
            return;
        }
        out.append('>');
        for (Object child : children) {
            if (child instanceof Tag tag) {
                tag.write(out);
            } else {
                out.append(child);
            }
        }
        out.append("</").append(name).append('>');
        if (!INLINE.contains(name)) {
            out.append('\n');
        }
    }

    private record Raw(String source) {
        @Override
        public String toString() {
            return source;
        }
    }
}
