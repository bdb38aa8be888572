package org.pumpwright.host.report.bucket;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.report.AsciiText;
import org.pumpwright.host.report.bucket.Block.Blanks;
import org.pumpwright.host.report.bucket.Block.Chart;
import org.pumpwright.host.report.bucket.Block.FactList;
import org.pumpwright.host.report.bucket.Block.Headline;
import org.pumpwright.host.report.bucket.Block.Paragraphs;
import org.pumpwright.host.report.bucket.Block.Table;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** The calibration report as ASCII text for any printer, with the same content and the same sheets. Thread-safe. */
public final class BucketTextReport {
    private static final int NAME_COLUMNS = 15;
    private static final int COLUMNS = 118;
    private static final int LONGEST_WORDS = 52;

    private BucketTextReport() {}

    /** The report in English, lines of at most 118 characters, a form feed between sheets. */
    public static String page(BucketRecord record, UnitSystem units) {
        return page(record, units, Texts.in(Language.EN));
    }

    /** The report in the language of the texts, its letters without accents. */
    public static String page(BucketRecord record, UnitSystem units, Texts texts) {
        Interpreter in = new Interpreter(texts);
        List<List<Block>> sheets = new ReportContent(record, units, in).sheets();
        StringBuilder out = new StringBuilder(8192);
        for (int i = 0; i < sheets.size(); i++) {
            out.append(i == 0 ? "" : "\f");
            line(
                    out,
                    in.typed(record.shop().title()).toUpperCase(Locale.ROOT) + "  "
                            + in.say("bucket.number", record.id()) + "  "
                            + in.say("bucket.page", i + 1, sheets.size()));
            line(out, "=".repeat(COLUMNS));
            if (record.practice()) {
                line(out, in.say("bucket.practice"));
            }
            sheets.get(i).forEach(block -> write(out, block));
            if (i == sheets.size() - 1) {
                line(out, "");
                line(out, "--- " + in.say("bucket.end") + " ---");
            }
        }
        return out.toString();
    }

    private static void write(StringBuilder out, Block block) {
        if (block instanceof FactList facts) {
            title(out, facts.title());
            int longest = facts.facts().stream()
                    .mapToInt(fact -> fact.getKey().length() + 1)
                    .max()
                    .orElse(0);
            for (Map.Entry<String, String> fact : facts.facts()) {
                wrapped(out, padded(fact.getKey(), Math.max(NAME_COLUMNS, longest)), fact.getValue());
            }
        } else if (block instanceof Table table) {
            table(out, table);
        } else if (block instanceof Paragraphs words) {
            title(out, words.title());
            words.sentences().forEach(sentence -> wrapped(out, "", sentence));
        } else if (block instanceof Headline headline) {
            title(out, headline.k());
            wrapped(out, "", headline.uncertainty());
            wrapped(out, "", headline.range());
            line(out, headline.finding());
        } else if (block instanceof Blanks blanks) {
            line(out, "");
            blanks.words().forEach(word -> line(out, padded(word, 50) + " ______________________________"));
        } else if (!(block instanceof Chart)) {
            throw new IllegalStateException("no text for " + block);
        }
    }

    private static void title(StringBuilder out, String title) {
        line(out, "");
        if (!title.isBlank()) {
            line(out, title);
            line(out, "-".repeat(Math.min(COLUMNS, title.length())));
        }
    }

    /** Columns as wide as their widest entry; words that are longer than fits go on below. */
    static void table(StringBuilder out, Table table) {
        title(out, table.title());
        List<List<String>> rows = new ArrayList<>(List.of(table.head()));
        rows.addAll(table.rows());
        int[] widths = new int[table.head().size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                int longest =
                        row == table.head() ? headWidth(row.get(i)) : row.get(i).length();
                widths[i] = Math.max(widths[i], Math.min(i < table.words() ? LONGEST_WORDS : 30, longest));
            }
        }
        for (List<String> row : rows) {
            row(out, row, widths, table.words());
        }
        if (!table.note().isBlank()) {
            wrapped(out, "", table.note());
        }
    }

    private static int headWidth(String head) {
        int longest = 0;
        for (String word : head.split(" ", -1)) {
            longest = Math.max(longest, word.length());
        }
        return longest;
    }

    private static void row(StringBuilder out, List<String> row, int[] widths, int words) {
        List<List<String>> parts = new ArrayList<>();
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            parts.add(pieces(AsciiText.of(row.get(i)), widths[i]));
            lines = Math.max(lines, parts.get(i).size());
        }
        for (int n = 0; n < lines; n++) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String piece = n < parts.get(i).size() ? parts.get(i).get(n) : "";
                text.append(i == 0 ? "" : "  ").append(i < words ? padded(piece, widths[i]) : right(piece, widths[i]));
            }
            line(out, text.toString());
        }
    }

    /** The words in pieces of at most this width. */
    private static List<String> pieces(String text, int width) {
        List<String> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (piece.length() > 0 && piece.length() + 1 + word.length() > width) {
                pieces.add(piece.toString());
                piece = new StringBuilder();
            }
            piece.append(piece.length() == 0 ? "" : " ").append(word);
        }
        pieces.add(piece.toString());
        return pieces;
    }

    private static void wrapped(StringBuilder out, String lead, String text) {
        boolean first = true;
        for (String piece : pieces(AsciiText.of(text), COLUMNS - lead.length())) {
            line(out, (first ? lead : " ".repeat(lead.length())) + piece);
            first = false;
        }
    }

    private static void line(StringBuilder out, String text) {
        out.append(AsciiText.of(text).stripTrailing()).append('\n');
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }
}
