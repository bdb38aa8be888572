package org.pumpwright.host.ui.work;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Consumer;
import org.pumpwright.host.run.StopButton;

/**
 * STOP's own way to the stand. A press wakes a thread that does nothing else and calls everything that is registered, so that neither
 * drawing nor work stands before it.
 *
 * <p>One thing it can't do: a key or a touch reaches any program of this toolkit on the JavaFX thread. While something holds that thread
 * up, STOP in the window waits with it; hence nothing long may run there, and {@link ScreenWatch} shows it when something did. Ctrl-C at the
 * terminal does not go through that thread, and the stand's own emergency stop needs no program at all.
 *
 * <p>Thread-safe.
 */
public final class StopPress implements AutoCloseable {
    private final List<Consumer<String>> registered = new CopyOnWriteArrayList<>();
    private final LinkedBlockingQueue<String> presses = new LinkedBlockingQueue<>();
    private final Thread thread = new Thread(this::serve, "STOP");

    /** Something that is stopped while this is open. Thread-safe. */
    public interface Registration extends AutoCloseable {
        @Override
        void close();
    }

    /** Begins to listen. */
    public StopPress() {
        thread.setDaemon(true);
        thread.start();
    }

    /** Has this button pressed when STOP is. */
    public Registration register(StopButton button) {
        return register(button::press);
    }

    /**
     * Has this called when STOP is pressed.
     *
     * @param stopping takes why; it must neither block nor throw
     */
    public Registration register(Consumer<String> stopping) {
        registered.add(stopping);
        return () -> registered.remove(stopping);
    }

    /** Stops everything registered, at once and without waiting for it. Any thread. */
    public void press(String why) {
        presses.add(why);
    }

    /** Stops everything registered on the calling thread: for when the process ends and other threads may not run any more. */
    public void pressHere(String why) {
        stopAll(why);
    }

    private void serve() {
        try {
            while (true) {
                stopAll(presses.take());
            }
        } catch (InterruptedException e) {
            // Closing the window interrupts the wait for the next press; there is nothing left to do.
            Thread.currentThread().interrupt();
        }
    }

    private void stopAll(String why) {
        for (Consumer<String> each : registered) {
            try {
                each.accept(why);
            } catch (RuntimeException e) {
                // The others must be stopped all the same; the fault goes to the log.
                System.getLogger(StopPress.class.getName()).log(System.Logger.Level.ERROR, "STOP", e);
            }
        }
    }

    /** Ends the thread. */
    @Override
    public void close() {
        thread.interrupt();
    }
}
