package org.pumpwright.host.ui;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.app.record.StoreChoice;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.work.Tick;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * A test of the window without a display. The toolkit runs in this process on a picture in memory; a test builds its window with
 * {@link #show} and does the rest inside {@link #onScreen}.
 */
public abstract class WindowTest {
    /** A Monday morning. */
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T09:15:00Z"), ZoneOffset.ofHours(-6));

    /** The smallest and the largest display that screens are laid out for. */
    public static final int[][] SIZES = {{1280, 800}, {1920, 1080}};

    /** Long enough for a machine on which much else goes on. */
    private static final int PATIENCE_SECONDS = 90;

    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    static {
        TOOLKIT.setLevel(Level.SEVERE);
        System.setProperty("testfx.robot", "glass");
        System.setProperty("testfx.headless", "true");
        System.setProperty("prism.order", "sw");
        System.setProperty("prism.text", "t2k");
        System.setProperty("glass.platform", "Monocle");
        System.setProperty("monocle.platform", "Headless");
        System.setProperty("headless.geometry", "1920x1080-32");
    }

    private Stage stage;

    @BeforeAll
    static void startToolkit() throws Exception {
        // The only way of starting it that leaves clicks working in the same process.
        FxToolkit.registerPrimaryStage();
        Platform.setImplicitExit(false);
    }

    /** What the window is given: the project's data files, records in a folder of the test's own. */
    public static BenchServices services(Path records) {
        return new BenchServices(
                Firmware.root(),
                new Shelf(Firmware.root().resolve("fixtures")),
                new Stands(WireTiming.STANDARD, SerialPorts::open),
                records,
                new RecordFolder(records, records.resolve("spare")).marking(),
                new RecordBook(
                        new StoreChoice(
                                Optional.empty(),
                                records.resolve("ledger.db"),
                                records.resolve("keys"),
                                StoreChoice.DESK),
                        records,
                        records.resolve("spare")),
                CLOCK);
    }

    /** An empty frame in English with US units. JavaFX thread only. */
    public static BenchWindow frame() {
        return frame(FXCollections.observableArrayList());
    }

    /** The same with ticks. JavaFX thread only. */
    public static BenchWindow frame(ObservableList<Tick> ticks) {
        return new BenchWindow(new Saying(Language.EN, UnitSystem.US), CLOCK, ticks, BenchKeys.USUAL);
    }

    /** Shows a scene in a window of this size. */
    public void show(Scene scene, int width, int height) throws Exception {
        onScreen(() -> {
            if (stage != null && stage.getScene() == scene && stage.getWidth() == width) {
                return true;
            }
            // A stage without a display does not survive a change of its size while it is being drawn: a new one for
            // each.
            closeNow();
            stage = new Stage();
            stage.setScene(scene);
            stage.setWidth(width);
            stage.setHeight(height);
            stage.show();
            return true;
        });
        settle();
    }

    /** Does something on the JavaFX thread and waits for it. */
    public static <T> T onScreen(Callable<T> work) throws Exception {
        return WaitForAsyncUtils.asyncFx(work).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    /** Waits until what was handed to the JavaFX thread is done and drawn. */
    public static void settle() {
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Waits until something holds; what is waited for is looked at on the JavaFX thread. */
    public static void until(Callable<Boolean> holds) throws Exception {
        WaitForAsyncUtils.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS, () -> onScreen(holds));
    }

    /** Presses a key and lets it go, as the toolkit tells a scene of it. JavaFX thread only. */
    public static void press(Scene scene, KeyCode key) {
        press(scene, key, false, false);
    }

    /** The same with Control or Alt held. JavaFX thread only. */
    public static void press(Scene scene, KeyCode key, boolean control, boolean alt) {
        Node target = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
        Event.fireEvent(target, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", key, false, control, alt, false));
        // What was pressed may have taken the node away that had the keyboard.
        Node now = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
        Event.fireEvent(now, new KeyEvent(KeyEvent.KEY_RELEASED, "", "", key, false, control, alt, false));
    }

    /** Types text and Enter at once, as a scanner does. JavaFX thread only. */
    public static void scan(Scene scene, String text) {
        typed(scene, text + "\r");
    }

    /** Types text into what has the keyboard. JavaFX thread only. */
    public static void typed(Scene scene, String text) {
        for (char character : text.toCharArray()) {
            Node target = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
            Event.fireEvent(
                    target,
                    new KeyEvent(
                            KeyEvent.KEY_TYPED,
                            String.valueOf(character),
                            "",
                            KeyCode.UNDEFINED,
                            false,
                            false,
                            false,
                            false));
        }
    }

    /** Presses the mouse on something, and does not let it go. JavaFX thread only. */
    public static void pressMouse(Node on) {
        MouseButton left = MouseButton.PRIMARY;
        Event.fireEvent(
                on,
                new MouseEvent(
                        MouseEvent.MOUSE_PRESSED,
                        5,
                        5,
                        5,
                        5,
                        left,
                        1,
                        false,
                        false,
                        false,
                        false,
                        true,
                        false,
                        false,
                        true,
                        false,
                        false,
                        null));
    }

    /** The button with this id. JavaFX thread only. */
    public static Button button(Scene scene, String id) {
        Node found = scene.lookup("#" + id);
        if (found instanceof Button button) {
            return button;
        }
        throw new AssertionError("no button with id " + id);
    }

    @AfterEach
    void closeStage() throws Exception {
        onScreen(() -> {
            closeNow();
            return true;
        });
    }

    private void closeNow() {
        if (stage != null) {
            stage.hide();
            stage.setScene(null);
            stage = null;
        }
    }
}
