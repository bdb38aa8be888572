package org.pumpwright.host.app.record;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * Does what a test needs of the records on a thread of its own, so that a store which is slow or away keeps nobody waiting for
 * long: it is opened while the stand is, and asked with patience that ends. Thread-safe.
 */
public final class Bookkeeper implements AutoCloseable {
    /** A person at the stand looks up by then. */
    public static final Duration FOR_A_LOOK = Duration.ofSeconds(2);

    /** How long a person waits at the end of a test; what is not on record by then waits in its folder. */
    public static final Duration FOR_AN_ENTRY = Duration.ofSeconds(10);

    private final RecordBook book;
    private final ExecutorService thread = Executors.newSingleThreadExecutor(Bookkeeper::daemon);
    private final AtomicBoolean behind = new AtomicBoolean();

    /** @param book closed with this */
    public Bookkeeper(RecordBook book) {
        this.book = book;
    }

    private static Thread daemon(Runnable task) {
        Thread thread = new Thread(task, "bookkeeper");
        thread.setDaemon(true);
        return thread;
    }

    /** Opens the store soon, if there is one: after the next run it is open. Its trouble is told when something is entered. */
    public void openSoon(String chain) {
        if (book.choice().mayHold()) {
            Future<?> opened = thread.submit(() -> book.store(chain));
            behind.set(opened.isCancelled());
        }
    }

    /** What is on record of a unit from before this claim, the newest first; nothing when the store does not answer soon. */
    public List<Entry> visits(String serial, Optional<String> claim) {
        try {
            return ask(() -> book.visits(serial, claim), FOR_A_LOOK);
        } catch (TimeoutException | ExecutionException e) {
            // It is told when the run is entered: once is enough.
            return List.of();
        }
    }

    /** Puts on record what waits for it; what the store does not take soon goes on waiting, and the reason is told. */
    public RecordBook.Entered enter(List<RunRecord> fresh) {
        try {
            return ask(() -> book.workOff(fresh), FOR_AN_ENTRY);
        } catch (TimeoutException e) {
            return late("%s has not answered for %d s".formatted(book.choice().words(), FOR_AN_ENTRY.toSeconds()));
        } catch (ExecutionException e) {
            return late(book.choice().words() + ": " + e.getCause());
        }
    }

    private RecordBook.Entered late(String why) {
        return new RecordBook.Entered(List.of(), book.waiting(), List.of(why + "."));
    }

    private <T> T ask(Callable<T> what, Duration patience) throws TimeoutException, ExecutionException {
        Future<T> answer = thread.submit(what);
        try {
            T told = answer.get(patience.toMillis(), TimeUnit.MILLISECONDS);
            behind.set(false);
            return told;
        } catch (TimeoutException e) {
            behind.set(true);
            throw e;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new ExecutionException(
                    new StoreException(StoreException.Reason.STORE_FAILED, "the wait was interrupted", e));
        }
    }

    /** Closes the book, unless the store still keeps the thread waiting: then the end of the program does. */
    @Override
    public void close() {
        thread.shutdown();
        if (!behind.get()) {
            book.close();
        }
    }
}
