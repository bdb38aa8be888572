package org.pumpwright.host.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.run.StopButton;

/**
 * Presses stop when the process is told to end, by Ctrl-C for one, and holds the process until what runs has ended safe and is kept, or
 * three seconds are over. Closed when nothing runs any more. Thread-safe.
 */
public final class EndOfProcess implements AutoCloseable {
    private static final long PATIENCE_SECONDS = 3;

    private final Stands stands;
    private final StopButton stop;
    private final Runnable afterStop;
    private final CountDownLatch over = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stopAndWait, "stop at the end of the process");

    private EndOfProcess(Stands stands, StopButton stop, Runnable afterStop) {
        this.stands = stands;
        this.stop = stop;
        this.afterStop = afterStop;
    }

    /**
     * Begins to watch.
     *
     * @param stop what is pressed
     * @param afterStop what is done besides, right after that
     */
    public static EndOfProcess watch(Stands stands, StopButton stop, Runnable afterStop) {
        EndOfProcess end = new EndOfProcess(stands, stop, afterStop);
        Runtime.getRuntime().addShutdownHook(end.hook);
        stands.beforeProcessEnds(end::stopAndWait);
        return end;
    }

    /** The process ends with the thread that calls this. */
    private void stopAndWait() {
        stop.press("the program was told to end");
        afterStop.run();
        try {
            if (!over.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                Runtime.getRuntime().halt(ExitCode.STAND);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        over.countDown();
        stands.beforeProcessEnds(() -> {});
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The process is ending already, by this very hook: there is nothing to forget.
            return;
        }
    }
}
