package org.pumpwright.benchmarks.window;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.stage.Window;
import org.pumpwright.host.cli.Main;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/**
 * The program itself, with somebody beside it who looks at the clock when its window is painted first and when the strip above says that the
 * stand is there; then closes the window.
 */
public final class TimedStart {
    private static final long LOOK_MILLIS = 2;
    private static final double MILLIS = 1e6;
    private static final int PAINTED = 3;

    private static boolean seen;
    private static int pulses;

    private TimedStart() {}

    /**
     * Starts the program with these arguments. The system property {@code begun} is the system's nanosecond clock from before the process
     * was made, which on Linux is the same for all processes.
     */
    public static void main(String[] arguments) {
        Thread watcher = new Thread(TimedStart::look, "start watcher");
        watcher.setDaemon(true);
        watcher.start();
        Main.main(arguments);
    }

    private static void look() {
        try {
            while (true) {
                TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
                if (isUp()) {
                    return;
                }
            }
        } catch (InterruptedException e) {
            // The process ends.
            Thread.currentThread().interrupt();
        }
    }

    /** Whether the toolkit runs: then the rest is done on its thread. */
    private static boolean isUp() {
        try {
            Platform.runLater(TimedStart::lookForWindow);
            return true;
        } catch (IllegalStateException e) {
            // It has not been started yet.
            return false;
        }
    }

    private static void lookForWindow() {
        if (!seen && Window.getWindows().stream().anyMatch(Window::isShowing)) {
            seen = true;
            clock().start();
        } else if (!seen) {
            Platform.runLater(TimedStart::lookForWindow);
        }
    }

    private static AnimationTimer clock() {
        return new AnimationTimer() {
            @Override
            public void handle(long now) {
                pulses++;
                if (pulses == PAINTED) {
                    tell("first frame");
                }
                if (pulses >= PAINTED && isStandThere()) {
                    stop();
                    tell("stand there");
                    List.copyOf(Window.getWindows()).forEach(Window::hide);
                }
            }
        };
    }

    private static boolean isStandThere() {
        // Asked for only now: the words are read when the window needs them, as without this class.
        String live = Texts.in(Language.EN).say("ui.tick.link.ok");
        return Window.getWindows().get(0).getScene().getRoot().lookupAll(".tick-state").stream()
                .anyMatch(state -> state instanceof Label label && live.equals(label.getText()));
    }

    private static void tell(String what) {
        System.out.printf(Locale.ROOT, "%s %.0f%n", what, (System.nanoTime() - Long.getLong("begun")) / MILLIS);
    }
}
