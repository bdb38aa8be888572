package org.pumpwright.host.ui.work;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import javafx.application.Platform;

/**
 * Sees when the JavaFX thread is held up, for then STOP's key is held up too: five times a second it asks the thread to answer, and counts
 * the tenths of a second until it does. Thread-safe.
 */
public final class ScreenWatch implements AutoCloseable {
    private static final long LIMIT_MILLIS = 100;
    private static final long BETWEEN_MILLIS = 200;

    private final Thread thread = new Thread(this::watch, "screen watch");
    private final IntConsumer heldUp;

    /** @param heldUp takes, on the JavaFX thread, for how long it was held up at least, ms */
    public ScreenWatch(IntConsumer heldUp) {
        this.heldUp = heldUp;
        thread.setDaemon(true);
        thread.start();
    }

    private void watch() {
        try {
            while (true) {
                long millis = answerMillis();
                if (millis > 0) {
                    Platform.runLater(() -> heldUp.accept((int) millis));
                }
                TimeUnit.MILLISECONDS.sleep(BETWEEN_MILLIS);
            }
        } catch (InterruptedException e) {
            // Closing the window interrupts the watch; there is nothing left to do.
            Thread.currentThread().interrupt();
        }
    }

    private static long answerMillis() throws InterruptedException {
        CountDownLatch answered = new CountDownLatch(1);
        Platform.runLater(answered::countDown);
        long millis = 0;
        while (!answered.await(LIMIT_MILLIS, TimeUnit.MILLISECONDS)) {
            millis += LIMIT_MILLIS;
        }
        return millis;
    }

    @Override
    public void close() {
        thread.interrupt();
    }
}
