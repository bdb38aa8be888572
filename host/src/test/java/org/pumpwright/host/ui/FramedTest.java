package org.pumpwright.host.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.ui.work.Background;
import org.pumpwright.host.ui.work.StandWatchModel;

/**
 * A test of screens in a frame of their own: what they need around them, a person's hands on them, and how it is all put away again. A
 * subclass opens the frame with one of the {@code open}s; opening another puts the one before away.
 */
public abstract class FramedTest extends WindowTest {
    @TempDir
    protected Path records;

    protected BenchWindow window;
    protected Background background;
    /** Watches the stand; there is none before a frame with a stand was opened. */
    protected StandWatchModel watch;

    /** What the window is given, with records in this test's folder. */
    protected BenchServices services;

    @BeforeEach
    final void giveServices() {
        services = services(records);
    }

    /** Opens a frame that watches a stand, which is not reached yet; {@code screens} then adds to it, on the JavaFX thread. */
    protected final void open(Stands stands, StandDescription stand, Optional<String> port, Callable<?> screens)
            throws Exception {
        putAway();
        onScreen(() -> {
            background = Background.threads(trouble -> window.trouble(trouble));
            watch = new StandWatchModel(background, stands, CLOCK);
            watch.choose(stand, port);
            window = frame(watch.ticks());
            return screens.call();
        });
        show(window.scene(), 1280, 800);
    }

    /** Opens a frame that has nothing to do with a stand; {@code screens} then adds to it, on the JavaFX thread. */
    protected final void open(Callable<?> screens) throws Exception {
        putAway();
        onScreen(() -> {
            background = Background.threads(trouble -> window.trouble(trouble));
            window = frame();
            return screens.call();
        });
        show(window.scene(), 1280, 800);
    }

    @AfterEach
    final void closeAll() throws Exception {
        putAway();
        services.book().close();
    }

    private void putAway() throws Exception {
        onScreen(() -> {
            if (watch != null) {
                watch.stop();
            }
            if (background != null) {
                background.close();
            }
            if (window != null) {
                window.close();
            }
            return true;
        });
    }

    /** Presses a key. */
    protected final void press(KeyCode key) throws Exception {
        onScreen(() -> {
            press(window.scene(), key);
            return true;
        });
    }

    /** Scans a barcode. */
    protected final void scan(String text) throws Exception {
        onScreen(() -> {
            scan(window.scene(), text);
            return true;
        });
    }

    /** Chooses a line of a list, counted from 0. */
    protected final void select(String list, int line) throws Exception {
        onScreen(() -> {
            ((ListView<?>) window.scene().lookup("#" + list))
                    .getSelectionModel()
                    .select(line);
            return true;
        });
    }

    /** Types into a field, in the place of what stands there. */
    protected final void type(String field, String text) throws Exception {
        onScreen(() -> {
            ((TextField) window.scene().lookup("#" + field)).setText(text);
            return true;
        });
    }

    /** Presses a button of a screen. */
    protected final void fire(String id) throws Exception {
        onScreen(() -> {
            button(window.scene(), id).fire();
            return true;
        });
    }
}
