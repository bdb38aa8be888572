package org.pumpwright.host.record.exchange;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Lines of comma-separated values (RFC 4180). A text that a spreadsheet would take for a formula gets an apostrophe before it.
 * Thread-safe.
 */
final class Csv {
    private static final String FORMULA_SIGNS = "=+-@\t\r";

    private Csv() {}

    static String line(List<String> values) {
        return values.stream().map(Csv::quoted).collect(Collectors.joining(",")) + "\r\n";
    }

    /** A text that people typed. */
    static String safe(String text) {
        return !text.isEmpty() && FORMULA_SIGNS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String quoted(String value) {
        boolean plain = value.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? value : '"' + value.replace("\"", "\"\"") + '"';
    }
}
