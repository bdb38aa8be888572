package org.pumpwright.benchmarks.regrade;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Regrader;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;

/** Judges stored runs again one after the other, and takes the time of each part. Confined to one thread. */
final class OneRun {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Regrader regrader;
    private final RecordFolder out;
    private final Clock clock = Clock.systemUTC();

    OneRun(Shelf shelf, RecordFolder out) throws OrderException, DataFileException {
        regrader = new Regrader(shelf, Optional.empty(), Optional.empty(), UnitSystem.US);
        this.out = out;
    }

    /** Nanoseconds of each part, and of the processor for all of them: on a busy machine that says more. */
    record Split(long read, long judge, long write, long processor) {
        long total() {
            return read + judge + write;
        }
    }

    /** One run: read, judged, its new record and papers written. */
    Split measure(Path file) throws OrderException, RunRecordException {
        long processor = THREADS.getCurrentThreadCpuTime();
        long begun = System.nanoTime();
        RunRecord run = RunRecordFile.read(file);
        long read = System.nanoTime();
        Regrader.Again again = regrader.judge(run, clock.instant());
        long judged = System.nanoTime();
        RecordFolder.Kept kept = out.add(again.record(), UnitSystem.US);
        if (kept.trouble().isPresent()) {
            throw new IllegalStateException(kept.trouble().get());
        }
        return new Split(
                read - begun, judged - read, System.nanoTime() - judged, THREADS.getCurrentThreadCpuTime() - processor);
    }
}
