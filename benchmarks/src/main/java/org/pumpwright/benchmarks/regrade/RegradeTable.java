package org.pumpwright.benchmarks.regrade;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Regrading;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.run.StopButton;

/**
 * Prints how long one stored run takes to be read, judged and written, and how long hundreds and thousands take on one
 * thread and on all cores.
 */
public final class RegradeTable {
    private static final int DISTINCT = 36;
    private static final int WARM_UP = 300;
    private static final int SINGLE = 300;
    private static final List<Integer> COUNTS = List.of(100, 1000, 10_000);
    private static final double NANOS = 1e9;
    private static final double MILLIS = 1e6;
    private static final double MEGA = 1e6;

    private final Shelf shelf;
    private final Path scratch;
    private final double[] mostHeap = new double[2];

    private RegradeTable(Shelf shelf, Path scratch) {
        this.shelf = shelf;
        this.scratch = scratch;
    }

    /**
     * Measures and prints; some minutes, and up to 8 GB in the folder.
     *
     * @param arguments the project's folder, a folder to work in, then if wanted the numbers of runs
     */
    public static void main(String[] arguments) throws Exception {
        Path scratch = Files.createTempDirectory(Files.createDirectories(Path.of(arguments[1])), "regrade");
        List<Integer> counts = arguments.length > 2
                ? Arrays.stream(arguments, 2, arguments.length)
                        .map(Integer::valueOf)
                        .toList()
                : COUNTS;
        try {
            new RegradeTable(new Shelf(Path.of(arguments[0], "fixtures")), scratch).print(counts);
        } finally {
            StoredRuns.remove(scratch);
        }
    }

    private void print(List<Integer> counts) throws Exception {
        List<Path> distinct = StoredRuns.distinct(shelf, DISTINCT, scratch.resolve("distinct"));
        System.out.printf(
                Locale.ROOT,
                "%d distinct runs by %s; heap at most %d MB, %d cores, %s %s%n%n",
                distinct.size(),
                RunRecordFile.read(distinct.get(0)).plan(),
                Runtime.getRuntime().maxMemory() / 1_000_000,
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("java.vm.name"),
                System.getProperty("java.version"));
        single(distinct);
        many(distinct, counts);
    }

    private void single(List<Path> distinct) throws Exception {
        List<Path> files = StoredRuns.copies(distinct, WARM_UP + SINGLE, scratch.resolve("single"));
        OneRun one = new OneRun(shelf, new RecordFolder(scratch.resolve("single-out"), scratch.resolve("spare")));
        List<OneRun.Split> splits = new ArrayList<>();
        for (Path file : files) {
            splits.add(one.measure(file));
        }
        System.out.printf(
                Locale.ROOT,
                "The first run of a fresh program: %.0f ms.%n%n",
                splits.get(0).total() / MILLIS);
        List<OneRun.Split> warm = splits.subList(WARM_UP, splits.size());
        System.out.println("| one stored run, warm | median | 95 % below | worst |");
        System.out.println("| --- | --- | --- | --- |");
        row("read and checked", warm.stream().mapToLong(OneRun.Split::read).toArray());
        row("judged", warm.stream().mapToLong(OneRun.Split::judge).toArray());
        row(
                "record written and forced to the disk, papers made",
                warm.stream().mapToLong(OneRun.Split::write).toArray());
        row("all", warm.stream().mapToLong(OneRun.Split::total).toArray());
        row(
                "all, time of the processor",
                warm.stream().mapToLong(OneRun.Split::processor).toArray());
        System.out.println();
        StoredRuns.remove(scratch.resolve("single"));
        StoredRuns.remove(scratch.resolve("single-out"));
    }

    private static void row(String name, long[] nanos) {
        long[] sorted = nanos.clone();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f ms | %.1f ms | %.1f ms |%n",
                name,
                sorted[sorted.length / 2] / MILLIS,
                sorted[(int) Math.round(0.95 * (sorted.length - 1))] / MILLIS,
                sorted[sorted.length - 1] / MILLIS);
    }

    private void many(List<Path> distinct, List<Integer> counts) throws Exception {
        int cores = Runtime.getRuntime().availableProcessors();
        System.out.println(
                "| runs | records | way | seconds | runs/s | growth of time over growth of runs | most heap used |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
        double[] before = new double[2];
        for (int i = 0; i < counts.size(); i++) {
            int count = counts.get(i);
            Path stored = scratch.resolve("stored");
            List<Path> files = StoredRuns.copies(distinct, count, stored);
            double growth = i == 0 ? 1 : count / (double) counts.get(i - 1);
            double[] now = {loop(files), cores(stored, cores)};
            for (int way = 0; way < 2; way++) {
                System.out.printf(
                        Locale.ROOT,
                        "| %d | %.0f MB | %s | %.1f | %.0f | %s | %.0f MB |%n",
                        count,
                        megabytes(files),
                        way == 0 ? "plain loop, one thread" : "the command, %d threads".formatted(cores),
                        now[way],
                        count / now[way],
                        i == 0 ? "-" : String.format(Locale.ROOT, "%.2f", now[way] / before[way] / growth),
                        mostHeap[way] / MEGA);
            }
            before = now;
            StoredRuns.remove(stored);
        }
    }

    private double loop(List<Path> files) throws Exception {
        Path out = scratch.resolve("loop");
        OneRun one = new OneRun(shelf, new RecordFolder(out, scratch.resolve("spare")));
        HeapPeak peak = HeapPeak.begin();
        long begun = System.nanoTime();
        for (Path file : files) {
            one.measure(file);
        }
        double seconds = (System.nanoTime() - begun) / NANOS;
        mostHeap[0] = peak.bytes();
        StoredRuns.remove(out);
        return seconds;
    }

    private double cores(Path stored, int threads) throws Exception {
        Path out = scratch.resolve("command");
        Regrading regrading = new Regrading(shelf, new RecordFolder(out, scratch.resolve("spare")), Clock.systemUTC());
        Regrading.Order order =
                new Regrading.Order(List.of(stored), Optional.empty(), Optional.empty(), threads, false, UnitSystem.US);
        Count count = new Count();
        HeapPeak peak = HeapPeak.begin();
        long begun = System.nanoTime();
        regrading.carryOut(order, count, new StopButton());
        double seconds = (System.nanoTime() - begun) / NANOS;
        mostHeap[1] = peak.bytes();
        count.check();
        StoredRuns.remove(out);
        return seconds;
    }

    /** Makes sure that every run was judged. */
    private static final class Count implements Regrading.Listener {
        private int left;

        @Override
        public void begins(int files) {
            left = files;
        }

        @Override
        public void done(Regrading.Outcome outcome) {
            if (!(outcome instanceof Regrading.Outcome.Judged)) {
                throw new IllegalStateException("not judged: " + outcome);
            }
            left--;
        }

        void check() {
            if (left != 0) {
                throw new IllegalStateException(left + " runs were not judged");
            }
        }
    }

    private static double megabytes(List<Path> files) throws IOException {
        long bytes = 0;
        for (Path file : files) {
            bytes += Files.size(file);
        }
        return bytes / MEGA;
    }
}
