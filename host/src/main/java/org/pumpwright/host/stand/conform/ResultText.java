package org.pumpwright.host.stand.conform;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/**
 * The result of a script as a page of plain text. Its last line is the SHA-256 of every line above it, so that damage
 * shows, and so that a person can check it without this program: {@code head -n -1 FILE | sha256sum}. Thread-safe.
 */
public final class ResultText {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm XXX", Locale.ROOT);
    private static final String DIGEST = "sha256 of all lines above: ";
    private static final String SIGNATURE = """

            Checked by (name): ______________________________

            Date, signature:   ______________________________

            """;

    private ResultText() {}

    /** One check as two lines: what came out, and what was seen. */
    public static String of(CheckResult check) {
        return String.format(
                Locale.ROOT,
                "  %-12s  %s (%s)%n                %s",
                check.outcome().words(),
                check.name(),
                check.section(),
                check.evidence());
    }

    /** What the whole script says of the board. */
    public static String verdict(Conformance.Finding finding) {
        int held = finding.with(Outcome.HELD).size();
        int missing = finding.with(Outcome.NOT_POSSIBLE).size();
        String counts = String.format(
                Locale.ROOT,
                "%d held, %d broken, %d not possible here.",
                held,
                finding.broken().size(),
                missing);
        if (!finding.conforms()) {
            List<String> names = finding.broken().stream()
                    .map(check -> "  - " + check.name())
                    .toList();
            return "DOES NOT CONFORM. " + counts + "\nBroken:\n" + String.join("\n", names);
        }
        return missing == 0 ? "CONFORMS. " + counts : "CONFORMS as far as it was tried. " + counts;
    }

    /**
     * The page for a file, sealed.
     *
     * @param finding what came out
     * @param date when it was tried
     * @param program which program tried it, and its version
     */
    public static byte[] sealed(Conformance.Finding finding, ZonedDateTime date, String program) {
        StringBuilder page = new StringBuilder(256 * (finding.checks().size() + 4));
        page.append("Conformance of a board to the ")
                .append(Conformance.SPECIFICATION)
                .append("\n\n");
        row(page, "date", date.format(DATE));
        row(page, "board", finding.board());
        row(page, "line", finding.line());
        row(page, "tried by", program);
        page.append('\n');
        finding.checks().forEach(check -> page.append(of(check)).append('\n'));
        page.append('\n').append(verdict(finding)).append('\n').append(SIGNATURE);
        String text = page.toString().replace(System.lineSeparator(), "\n");
        return (text + DIGEST + sha256(text) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static void row(StringBuilder page, String name, String value) {
        page.append(String.format(Locale.ROOT, "%-9s %s%n", name, value));
    }

    private static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
