package org.pumpwright.benchmarks.papers;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.report.pdf.Attachment;
import org.pumpwright.host.report.pdf.Origin;
import org.pumpwright.host.report.pdf.PdfPaper;
import org.pumpwright.host.report.pdf.Sheet;

/** Prints how long each kind of paper takes from the record to the document's bytes: the first of its kind, then so many more, and what the
 * processor spent on each, which other work on the machine does not lengthen. */
public final class PaperTable {
    private static final int PAPERS = 100;
    private static final double MILLIS = 1e6;
    private static final int RECORD_BYTES = 24_000;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final Origin ORIGIN =
            new Origin("Example shop", OffsetDateTime.parse("2026-04-02T08:15:30-05:00"), "Pumpwright");

    private PaperTable() {}

    /**
     * Measures and prints; about two minutes.
     *
     * @param arguments if wanted the number of papers of each kind
     */
    public static void main(String[] arguments) {
        int papers = arguments.length > 0 ? Integer.parseInt(arguments[0]) : PAPERS;
        System.out.println("| paper | on | first, ms | median, ms | p99, ms | processor, ms | kB |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
        Attachment record = Attachment.record("1".repeat(RECORD_BYTES).getBytes(StandardCharsets.US_ASCII));
        for (Kind kind : Kind.values()) {
            for (Sheet sheet : kind.label() ? List.of(Sheet.LABEL) : List.of(Sheet.LETTER, Sheet.A4)) {
                measure(kind, sheet, papers, record);
            }
        }
    }

    private static void measure(Kind kind, Sheet sheet, int papers, Attachment record) {
        double first = 0;
        double[] others = new double[papers];
        double[] busy = new double[papers];
        int bytes = 0;
        for (int i = -1; i < papers; i++) {
            long worked = THREADS.getCurrentThreadCpuTime();
            long begin = System.nanoTime();
            bytes = PdfPaper.of(kind.page(), sheet, ORIGIN, Optional.of(record)).length;
            double millis = (System.nanoTime() - begin) / MILLIS;
            if (i < 0) {
                first = millis;
            } else {
                others[i] = millis;
                busy[i] = (THREADS.getCurrentThreadCpuTime() - worked) / MILLIS;
            }
        }
        Arrays.sort(others);
        Arrays.sort(busy);
        System.out.printf(
                Locale.ROOT,
                "| %s | %s | %.0f | %.1f | %.1f | %.1f | %d |%n",
                kind.words(),
                sheet.name().charAt(0) + sheet.name().substring(1).toLowerCase(Locale.ROOT),
                first,
                others[papers / 2],
                others[(int) Math.ceil(0.99 * papers) - 1],
                busy[papers / 2],
                bytes / 1000);
    }
}
