package org.pumpwright.host.ui;

import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** Opens the window and waits until it is closed. It is no {@code Application}, so that the toolkit may lie on the class path. Thread-safe. */
public final class BenchLauncher {
    /** Kept, for a logger that nobody holds forgets its level. */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private BenchLauncher() {}

    /**
     * Shows the window; returns when it is closed.
     *
     * @param stand the stand it begins with
     * @param surroundings the process's environment variables
     * @throws OrderException when there is no display, with what to do
     * @throws InterruptedException when the waiting thread is interrupted
     */
    public static void show(
            BenchSettings settings, BenchServices services, StandDescription stand, Map<String, String> surroundings)
            throws OrderException, InterruptedException {
        checkDisplay(surroundings);
        readTextsAhead();
        // It would complain on every start that it does not lie on the module path.
        TOOLKIT.setLevel(Level.SEVERE);
        CountDownLatch closed = new CountDownLatch(1);
        AtomicReference<Throwable> fault = new AtomicReference<>();
        startToolkit(() -> {
            try {
                open(settings, services, stand, closed);
            } catch (RuntimeException | LinkageError e) {
                fault.set(e);
                closed.countDown();
            }
        });
        closed.await();
        Platform.exit();
        if (fault.get() != null) {
            throw new IllegalStateException("the window could not be built", fault.get());
        }
    }

    private static void open(
            BenchSettings settings, BenchServices services, StandDescription stand, CountDownLatch closed) {
        Bench bench = new Bench(settings, services, stand);
        services.stands().beforeProcessEnds(() -> bench.window().stop().pressHere("the program was told to end"));
        Stage stage = new Stage();
        stage.setOnHidden(hidden -> {
            services.stands().beforeProcessEnds(() -> {});
            bench.close();
            closed.countDown();
        });
        bench.show(stage, settings.kiosk());
    }

    /** The file of texts takes a good part of a start; it is read while the toolkit wakes up. */
    private static void readTextsAhead() {
        Thread reader = new Thread(() -> Texts.in(Language.EN), "texts");
        reader.setDaemon(true);
        reader.start();
    }

    private static void startToolkit(Runnable first) throws OrderException {
        try {
            Platform.startup(first);
        } catch (RuntimeException | LinkageError e) {
            throw new OrderException(("the window can't be opened: %s. On Debian install what it draws with:"
                            + " sudo apt-get install -y libgtk-3-0 libxtst6. Without a display use the other commands:"
                            + " pumpwright --help.")
                    .formatted(e.getMessage()));
        }
    }

    private static void checkDisplay(Map<String, String> surroundings) throws OrderException {
        boolean linux = System.getProperty("os.name", "").startsWith("Linux");
        if (linux && surroundings.getOrDefault("DISPLAY", "").isEmpty()) {
            throw new OrderException(
                    "there is no display here (DISPLAY is not set), so no window can be opened. Start it at"
                            + " the bench computer's own screen; over ssh use: ssh -X. Without a display the other commands do the"
                            + " same work: pumpwright --help.");
        }
    }
}
