package org.pumpwright.host.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RecordHead;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.run.StopButton;

/**
 * Judges stored runs again by what is on the shelf now. Each gets a new record; the old ones are only read. Runs are judged
 * on several threads, a few at a time, and told in the order of their files, so that neither the number of threads nor the
 * number of records changes anything. Thread-safe.
 */
public final class Regrading {
    /** Runs in memory for each thread: enough that none waits for a slow one, few enough that ten thousand need no more. */
    private static final int AHEAD = 3;

    private static final long PATIENCE_SECONDS = 60;

    private final Shelf shelf;
    private final RecordFolder records;
    private final Clock clock;

    /**
     * @param shelf the shop's data files
     * @param records where the new records are kept
     * @param clock the shop's time
     */
    public Regrading(Shelf shelf, RecordFolder records, Clock clock) {
        this.shelf = shelf;
        this.records = records;
        this.clock = clock;
    }

    /**
     * What is to be judged again, and by what.
     *
     * @param paths record files, or folders in which they lie
     * @param curve name or file of a healthy curve; empty for the newest of each run's conditions
     * @param rules name or file of the rules; empty for those of each run's model
     * @param threads how many runs are judged at once
     * @param dryRun whether nothing is kept
     * @param units units of the papers
     */
    public record Order(
            List<Path> paths,
            Optional<String> curve,
            Optional<String> rules,
            int threads,
            boolean dryRun,
            UnitSystem units) {
        public Order {
            paths = List.copyOf(paths);
            if (threads < 1 || threads > 1000) {
                throw new IllegalArgumentException("%s threads, allowed are 1 to 1000".formatted(threads));
            }
        }
    }

    /** What came of one file. */
    public sealed interface Outcome {
        /** The file that was read. */
        Path file();

        /**
         * The run was judged again.
         *
         * @param runId id of the old record
         * @param before verdict in the old record
         * @param record the new record
         * @param kept its files; empty in a dry run
         * @param ofTheCurvesOwn whether the curve was made from this very run
         */
        record Judged(
                Path file,
                String runId,
                Verdict before,
                RunRecord record,
                Optional<RecordFolder.Kept> kept,
                boolean ofTheCurvesOwn)
                implements Outcome {
            /** Whether the verdict is another one than before. */
            public boolean changed() {
                return before != record.grade().verdict();
            }
        }

        /** The record is damaged, foreign or unfit; why, and what to do. */
        record NotJudged(Path file, String why) implements Outcome {}

        /** There was nothing to judge again; why. */
        record PassedOver(Path file, String why) implements Outcome {}
    }

    /** Hears what comes of each file, in the order of the files, on the thread that asked. */
    public interface Listener {
        /** The files are found. */
        void begins(int files);

        /** One is done. What is told is not to be held on to: there may be very many. */
        void done(Outcome outcome);
    }

    /**
     * Judges every run again. Once the button is pressed no more are begun; those that were are finished.
     *
     * @throws OrderException when there are no records, or the order won't do
     * @throws DataFileException when a data file is wrong
     * @throws RunRecordException when the folder does not take a new record: the others would fare no better
     */
    public void carryOut(Order order, Listener listener, StopButton stop)
            throws OrderException, DataFileException, RunRecordException {
        List<Path> files = RecordSearch.files(order.paths());
        Regrader regrader = new Regrader(shelf, order.curve(), order.rules(), order.units());
        if (!order.dryRun()) {
            records.checkWritable();
        }
        listener.begins(files.size());
        ExecutorService threads = Executors.newFixedThreadPool(order.threads());
        try {
            Line line = new Line(threads, listener, AHEAD * order.threads());
            Map<String, Path> seen = new HashMap<>();
            Instant now = clock.instant();
            for (Path file : files) {
                if (stop.pressed().isPresent()) {
                    break;
                }
                Optional<Outcome> over = passedOver(file, seen);
                line.add(over.isPresent() ? over::get : () -> outcome(file, regrader, order, now));
            }
            line.finish();
        } finally {
            finish(threads);
        }
    }

    /** What was begun is written whole before the process may end. */
    private static void finish(ExecutorService threads) {
        threads.shutdown();
        try {
            if (!threads.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                threads.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Runs under way, told in the order in which they were begun. */
    private record Line(ExecutorService threads, Listener listener, int most, Deque<Future<Outcome>> begun) {
        Line(ExecutorService threads, Listener listener, int most) {
            this(threads, listener, most, new ArrayDeque<>());
        }

        void add(Callable<Outcome> work) throws RunRecordException {
            if (begun.size() == most) {
                tell();
            }
            begun.add(threads.submit(work));
        }

        void finish() throws RunRecordException {
            while (!begun.isEmpty()) {
                tell();
            }
        }

        private void tell() throws RunRecordException {
            try {
                listener.done(begun.remove().get());
            } catch (ExecutionException e) {
                if (e.getCause() instanceof RunRecordException refused) {
                    throw refused;
                }
                throw new IllegalStateException("a run could not be judged again", e.getCause());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("waiting for a run to be judged again was interrupted", e);
            }
        }
    }

    /** Decided before the threads, so that it does not depend on which of them is first. */
    private static Optional<Outcome> passedOver(Path file, Map<String, Path> seen) {
        Optional<RecordHead> head = RecordHead.of(file);
        if (head.isEmpty()) {
            return Optional.empty();
        }
        if (head.get().regradedFrom().isPresent()) {
            return Optional.of(new Outcome.PassedOver(
                    file,
                    "judges run %s again already"
                            .formatted(head.get().regradedFrom().get())));
        }
        if (head.get().plan().startsWith(ManualDrive.PLAN + " ")) {
            return Optional.of(new Outcome.PassedOver(file, "was driven by hand: there is nothing to judge"));
        }
        Path first = seen.putIfAbsent(head.get().id(), file);
        return first == null
                ? Optional.empty()
                : Optional.of(new Outcome.PassedOver(file, "holds the same run as " + first));
    }

    private Outcome outcome(Path file, Regrader regrader, Order order, Instant now) throws RunRecordException {
        RunRecord run;
        Regrader.Again again;
        try {
            run = RunRecordFile.read(file);
            again = regrader.judge(run, now);
        } catch (RunRecordException e) {
            return new Outcome.NotJudged(file, "%s. %s.".formatted(e.problem(), e.remedy()));
        } catch (OrderException e) {
            return new Outcome.NotJudged(file, String.valueOf(e.getMessage()));
        }
        Optional<RecordFolder.Kept> kept =
                order.dryRun() ? Optional.empty() : Optional.of(records.add(again.record(), order.units()));
        return new Outcome.Judged(file, run.id(), run.grade().verdict(), again.record(), kept, again.ofTheCurvesOwn());
    }
}
