package org.pumpwright.host.ui.work;

import java.util.concurrent.CountDownLatch;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import org.jspecify.annotations.Nullable;

/** Work that goes on beside the window. Thread-safe, but for {@link #runningProperty} and {@link #afterwards}: JavaFX thread only. */
public final class Job {
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper(true);
    private final CountDownLatch over = new CountDownLatch(1);
    private @Nullable Thread worker;
    private boolean cancelled;

    Job() {}

    /** True until its result, or its failure, was handed to the screen. */
    public ReadOnlyBooleanProperty runningProperty() {
        return running.getReadOnlyProperty();
    }

    /** Has this done when its result was handed to the screen; at once when it was already. JavaFX thread only. */
    void afterwards(Runnable last) {
        if (running.get()) {
            running.addListener((observed, old, now) -> last.run());
        } else {
            last.run();
        }
    }

    /** Interrupts the work, or keeps it from beginning. What it would have handed to the screen is dropped. */
    public synchronized void cancel() {
        cancelled = true;
        if (worker != null) {
            worker.interrupt();
        }
    }

    /** Whether it was cancelled. */
    public synchronized boolean cancelled() {
        return cancelled;
    }

    /**
     * Waits until the work itself is over; never on the JavaFX thread.
     *
     * @throws InterruptedException when the waiting thread is interrupted
     */
    public void await() throws InterruptedException {
        over.await();
    }

    /** False when it need not begin any more. */
    synchronized boolean begin() {
        worker = Thread.currentThread();
        return !cancelled;
    }

    /** After this nobody interrupts the worker on its account. */
    synchronized void end(boolean ownThread) {
        worker = null;
        if (ownThread) {
            // A cancel that came too late for the work must not reach the next work of this thread.
            Thread.interrupted();
        }
        over.countDown();
    }

    void handedOver() {
        running.set(false);
    }
}
