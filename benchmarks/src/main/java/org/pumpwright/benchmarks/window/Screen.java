package org.pumpwright.benchmarks.window;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;

/** The toolkit and its thread. Thread-safe. */
final class Screen {
    /** Kept, for a logger that nobody holds forgets its level. */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private static final long PATIENCE_SECONDS = 600;

    private Screen() {}

    /** What is measured with the toolkit running. */
    interface Measurement {
        void run() throws Exception;
    }

    /** Starts the toolkit, measures, and ends the process, for the toolkit leaves threads behind that would keep it. */
    static void during(Measurement measurement) {
        int code = 1;
        try {
            start();
            measurement.run();
            code = 0;
        } catch (Exception e) {
            e.printStackTrace();
        } finally {
            System.exit(code);
        }
    }

    private static void start() throws InterruptedException {
        // It would complain that it does not lie on the module path.
        TOOLKIT.setLevel(Level.SEVERE);
        CompletableFuture<Boolean> started = new CompletableFuture<>();
        Platform.startup(() -> started.complete(true));
        Platform.setImplicitExit(false);
        wait(started);
    }

    /** Does something on the JavaFX thread and waits for it. */
    static <T> T on(Callable<T> work) throws InterruptedException {
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                done.complete(work.call());
            } catch (Exception e) {
                done.completeExceptionally(e);
            }
        });
        return wait(done);
    }

    /** Does something on the JavaFX thread that says itself when it is over, and waits for that. */
    static <T> T later(Callable<CompletableFuture<T>> work) throws InterruptedException {
        return wait(on(work));
    }

    private static <T> T wait(CompletableFuture<T> done) throws InterruptedException {
        try {
            return done.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException e) {
            throw new IllegalStateException("the window could not do it", e.getCause());
        } catch (TimeoutException e) {
            throw new IllegalStateException("the window did not do it within " + PATIENCE_SECONDS + " s", e);
        }
    }
}
