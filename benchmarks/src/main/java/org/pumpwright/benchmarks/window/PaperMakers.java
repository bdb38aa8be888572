package org.pumpwright.benchmarks.window;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.report.HtmlReport;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.report.pdf.Attachment;
import org.pumpwright.host.report.pdf.Origin;
import org.pumpwright.host.report.pdf.PdfPaper;
import org.pumpwright.host.report.pdf.Sheet;

/** Threads that make the same PDF report over and over, without a pause. Thread-safe. */
final class PaperMakers implements AutoCloseable {
    private static final Origin ORIGIN =
            new Origin("Example shop", OffsetDateTime.parse("2026-04-02T08:15:30-05:00"), "Pumpwright");
    private static final int RECORD_BYTES = 24_000;

    private final AtomicInteger made = new AtomicInteger();
    private final List<Thread> threads = new ArrayList<>();
    private volatile boolean closed;

    PaperMakers(int count) {
        for (int i = 0; i < count; i++) {
            Thread thread = new Thread(this::work, "paper maker");
            thread.setDaemon(true);
            threads.add(thread);
            thread.start();
        }
    }

    private void work() {
        Attachment record = Attachment.record("1".repeat(RECORD_BYTES).getBytes(StandardCharsets.US_ASCII));
        while (!closed) {
            String page = HtmlReport.page(SampleRecords.pass(), UnitSystem.US);
            if (PdfPaper.of(page, Sheet.LETTER, ORIGIN, Optional.of(record)).length > 0) {
                made.incrementAndGet();
            }
        }
    }

    /** How many papers were made so far. */
    int made() {
        return made.get();
    }

    @Override
    public void close() {
        closed = true;
        try {
            for (Thread thread : threads) {
                thread.join();
            }
        } catch (InterruptedException e) {
            // The measurement is broken off; the threads end by themselves.
            Thread.currentThread().interrupt();
        }
    }
}
