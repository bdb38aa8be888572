package org.pumpwright.host.report;

import java.text.Normalizer;
import java.util.Map;

/**
 * Text for any terminal and line printer: printable ASCII only. Signs of measurement get their usual ASCII spelling,
 * accents are dropped, anything else becomes a question mark; so no serial number can send a terminal commands.
 * Thread-safe.
 */
public final class AsciiText {
    private static final Map<Character, String> SPELLINGS = Map.ofEntries(
            Map.entry('±', "+-"),
            Map.entry('°', "deg "),
            Map.entry('Ω', "ohm"),
            Map.entry('µ', "u"),
            Map.entry('μ', "u"),
            Map.entry('×', "x"),
            Map.entry('–', "-"),
            Map.entry('—', "-"),
            Map.entry('−', "-"),
            Map.entry('≤', "<="),
            Map.entry('≥', ">="),
            Map.entry('’', "'"),
            Map.entry('ß', "ss"),
            Map.entry('²', "2"),
            Map.entry('³', "3"));

    private AsciiText() {}

    /** The text in printable ASCII. */
    public static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            String spelling = SPELLINGS.get(c);
            out.append(spelling == null ? c : spelling);
        }
        String parted = Normalizer.normalize(out, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
        return parted.replaceAll("[\\n\\t]", " ").replaceAll("[^\\x20-\\x7E]", "?");
    }
}
