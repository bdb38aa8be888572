package org.pumpwright.host.report;

import java.util.regex.Pattern;

/** Lines of at most 80 ASCII characters. Confined to one thread. */
final class TextPage {
    static final int COLUMNS = 80;

    private static final Pattern SPACES = Pattern.compile(" +");

    private final StringBuilder out = new StringBuilder(4096);

    TextPage line(String text) {
        String ascii = AsciiText.of(text).stripTrailing();
        out.append(ascii, 0, Math.min(COLUMNS, ascii.length())).append('\n');
        return this;
    }

    TextPage blank() {
        return line("");
    }

    TextPage rule(char c) {
        return line(String.valueOf(c).repeat(COLUMNS));
    }

    /** Text after a lead, broken between words; the lines that follow stand under the text's begin. */
    TextPage wrapped(String lead, String text) {
        String indent = " ".repeat(lead.length());
        StringBuilder line = new StringBuilder(lead);
        boolean empty = true;
        for (String word : SPACES.split(AsciiText.of(text).trim(), -1)) {
            String rest = word;
            while (!rest.isEmpty()) {
                if (!empty && line.length() + 1 + rest.length() > COLUMNS) {
                    line(line.toString());
                    line = new StringBuilder(indent);
                    empty = true;
                }
                line.append(empty ? "" : " ");
                int taken = Math.min(rest.length(), COLUMNS - line.length());
                line.append(rest, 0, taken);
                rest = rest.substring(taken);
                empty = false;
            }
        }
        return line(line.toString());
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
