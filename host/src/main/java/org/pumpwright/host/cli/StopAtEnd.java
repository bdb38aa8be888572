package org.pumpwright.host.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.pumpwright.host.run.StopButton;

/**
 * Presses the stop button when the process is told to end, by Ctrl-C or by the system, and holds the end up until what was
 * going on is over. Thread-safe.
 */
final class StopAtEnd implements AutoCloseable {
    private static final long PATIENCE_SECONDS = 3;

    private final StopButton stop;
    private final CountDownLatch over = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stopAndWait, "stop at the end of the process");

    private StopAtEnd(StopButton stop) {
        this.stop = stop;
    }

    /** Watches until it is closed. */
    static StopAtEnd of(StopButton stop) {
        StopAtEnd end = new StopAtEnd(stop);
        Runtime.getRuntime().addShutdownHook(end.hook);
        return end;
    }

    /** The process ends with this thread, so it waits until everything is safe and kept. */
    void stopAndWait() {
        stop.press("the program was told to end");
        try {
            if (!over.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                Runtime.getRuntime().halt(ExitCode.STAND);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** What was going on is over. */
    @Override
    public void close() {
        over.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The process is ending already, by this very hook: there is nothing to take away.
            return;
        }
    }
}
