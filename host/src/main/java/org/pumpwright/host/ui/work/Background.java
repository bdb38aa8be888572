package org.pumpwright.host.ui.work;

import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;
import org.pumpwright.host.stand.StandException;

/**
 * Runs use cases on worker threads and hands what they find to the screen. Nothing that takes longer than a frame may run on the JavaFX
 * thread: STOP's key arrives on it. Thread-safe.
 */
public final class Background implements AutoCloseable {
    private static final long LAST_MOMENT_SECONDS = 2;

    private final Executor workers;
    private final Executor screen;
    private final Consumer<Trouble> troubles;
    private final boolean inline;

    /** What is done again and again until it is cancelled. Confined to one worker thread. */
    public interface Watch extends AutoCloseable {
        /**
         * One turn; it should take well under a second, or end when it is interrupted.
         *
         * @throws Exception when it can't go on
         */
        void once() throws Exception;

        @Override
        void close();
    }

    private Background(Executor workers, Executor screen, Consumer<Trouble> troubles, boolean inline) {
        this.workers = workers;
        this.screen = screen;
        this.troubles = troubles;
        this.inline = inline;
    }

    /**
     * Worker threads as many as are asked for, and the JavaFX thread.
     *
     * @param troubles hears, on the JavaFX thread, of each failure that nobody else takes
     */
    public static Background threads(Consumer<Trouble> troubles) {
        ExecutorService workers = Executors.newCachedThreadPool(work -> {
            Thread thread = new Thread(work, "bench worker");
            thread.setDaemon(true);
            return thread;
        });
        return new Background(workers, Platform::runLater, troubles, false);
    }

    /** Everything at once on the calling thread, for tests; what is repeated has one turn. */
    public static Background inline(Consumer<Trouble> troubles) {
        return new Background(Runnable::run, Runnable::run, troubles, true);
    }

    /**
     * Runs a use case.
     *
     * @param done takes its result on the JavaFX thread
     */
    public <T> Job run(Callable<T> work, Consumer<? super T> done) {
        return run(work, done, this::told);
    }

    /**
     * Runs a use case.
     *
     * @param done takes its result on the JavaFX thread
     * @param failed takes its failure there instead
     */
    public <T> Job run(Callable<T> work, Consumer<? super T> done, Consumer<? super Throwable> failed) {
        Job job = new Job();
        if (workers instanceof ExecutorService service && service.isShutdown()) {
            // The window is closing: what still comes in begins nothing new.
            job.cancel();
            job.end(false);
            job.handedOver();
            return job;
        }
        workers.execute(() -> carryOut(job, work, done, failed));
        return job;
    }

    /**
     * Does something again and again until the job is cancelled.
     *
     * @param opened begins it; on the worker thread
     * @param failed takes the failure that ended it, on the JavaFX thread
     */
    public Job repeat(Callable<? extends Watch> opened, Consumer<? super Throwable> failed) {
        Job job = new Job();
        Callable<Boolean> turns = () -> {
            try (Watch watch = opened.call()) {
                do {
                    watch.once();
                } while (!inline && !job.cancelled());
            }
            return true;
        };
        workers.execute(() -> carryOut(job, turns, over -> {}, failed));
        return job;
    }

    /** Does something on the JavaFX thread, soon. */
    public void onScreen(Runnable action) {
        screen.execute(action);
    }

    /** Tells the banner. Any thread. */
    public void trouble(Trouble trouble) {
        onScreen(() -> troubles.accept(trouble));
    }

    private <T> void carryOut(Job job, Callable<T> work, Consumer<? super T> done, Consumer<? super Throwable> failed) {
        Runnable handOver;
        try {
            if (job.begin()) {
                T result = work.call();
                handOver = () -> done.accept(result);
            } else {
                handOver = () -> {};
            }
        } catch (Exception | AssertionError | LinkageError e) {
            handOver = () -> failed.accept(e);
        } finally {
            job.end(!inline);
        }
        Runnable last = handOver;
        onScreen(() -> handOver(job, last));
    }

    private static void handOver(Job job, Runnable last) {
        try {
            if (!job.cancelled()) {
                last.run();
            }
        } finally {
            job.handedOver();
        }
    }

    private void told(Throwable failure) {
        if (!endedOnPurpose(failure)) {
            troubles.accept(Trouble.of(failure));
        }
    }

    /** STOP interrupts some work; the banner has said so already. */
    private static boolean endedOnPurpose(Throwable failure) {
        return failure instanceof CancellationException
                || (failure instanceof StandException stand && stand.trouble() == StandException.Trouble.INTERRUPTED);
    }

    /** Interrupts what still runs, and gives what is being written a moment to end. */
    @Override
    public void close() {
        if (workers instanceof ExecutorService service) {
            service.shutdownNow();
            try {
                // What takes longer is a daemon, and ends with the program.
                boolean unused = service.awaitTermination(LAST_MOMENT_SECONDS, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
