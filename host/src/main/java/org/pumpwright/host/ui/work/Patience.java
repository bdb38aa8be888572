package org.pumpwright.host.ui.work;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.pumpwright.host.record.ledger.StoreException;

/** Asks a store that may be away, and does not wait for it longer than a person would. Thread-safe; called on worker threads. */
final class Patience {
    private static final Duration PERSON = Duration.ofSeconds(8);
    /** For a paper: the first of the day takes seconds on a slow machine besides what is asked of the store. */
    static final Duration PAPER = Duration.ofSeconds(40);

    private static final Duration LAST_MOMENT = Duration.ofSeconds(2);

    private Patience() {}

    /**
     * The answer.
     *
     * @param store its name for people
     * @throws StoreException when it has not answered by then
     */
    static <T> T ask(Callable<T> question, String store) throws Exception {
        return ask(question, store, PERSON);
    }

    /** The same with another patience. */
    static <T> T ask(Callable<T> question, String store, Duration patience) throws Exception {
        FutureTask<T> answer = new FutureTask<>(question);
        Thread asking = new Thread(answer, "asking the store");
        asking.setDaemon(true);
        asking.start();
        try {
            return answer.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            answer.cancel(true);
            throw new StoreException(
                    StoreException.Reason.STORE_FAILED,
                    "%s has not answered for %d s.".formatted(store, patience.toSeconds()),
                    e);
        } catch (InterruptedException e) {
            // The window closes: what is being written has a moment to end.
            asking.join(LAST_MOMENT.toMillis());
            throw e;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Exception cause) {
                throw cause;
            }
            throw e;
        }
    }
}
