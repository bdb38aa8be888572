package org.pumpwright.benchmarks.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.app.record.StoreChoice;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.Bench;
import org.pumpwright.host.ui.BenchKeys;
import org.pumpwright.host.ui.BenchServices;
import org.pumpwright.host.ui.BenchSettings;
import org.pumpwright.host.ui.Moment;

/**
 * The whole window, worked by keys as a technician works it. Confined to one thread, which is not
 * the toolkit's.
 */
final class WorkedBench implements AutoCloseable {
    private static final String STAND = "serial";
    private static final long TURN_MILLIS = 25;
    private static final long PATIENCE_SECONDS = 60;

    private final Bench bench;
    private final Stage stage;
    private final Scene scene;

    private WorkedBench(Bench bench, Stage stage) {
        this.bench = bench;
        this.stage = stage;
        this.scene = bench.window().scene();
    }

    /**
     * Opens it on the stand with a serial line.
     *
     * @param folder takes its files
     * @param plan text of the plan that is run
     * @param port what the stand is reached by
     */
    static WorkedBench open(Path root, Path folder, String plan, String port, Stands stands) throws Exception {
        Files.createDirectories(folder);
        Path records = folder.resolve("records");
        Path spare = folder.resolve("spare");
        Shelf shelf = new Shelf(ShopFiles.with(root.resolve("fixtures"), folder, plan));
        StoreChoice store = new StoreChoice(
                Optional.empty(), records.resolve("ledger.db"), folder.resolve("keys"), StoreChoice.DESK);
        BenchServices services = new BenchServices(
                root,
                shelf,
                stands,
                records,
                new RecordFolder(records, spare).marking(),
                new RecordBook(store, records, spare),
                Clock.systemUTC());
        BenchSettings settings =
                new BenchSettings(STAND, Optional.of(port), Language.EN, UnitSystem.US, false, false, BenchKeys.USUAL);
        var description = shelf.stand(STAND);
        return Screen.on(() -> {
            Bench bench = new Bench(settings, services, description);
            Stage stage = new Stage();
            bench.show(stage, false);
            return new WorkedBench(bench, stage);
        });
    }

    /** Takes a unit in hand and has the stand checked. */
    void takeIn() throws InterruptedException {
        until("the models are there", () -> scene.lookup("#model-demo-pump") != null);
        Screen.on(() -> {
            fire("model-demo-pump");
            ((TextField) scene.lookup("#serial")).setText("AB-1234");
            ((TextField) scene.lookup("#technician")).setText("A. Technician");
            fire("complaint-2");
            fire("product-0");
            fire("clean");
            return true;
        });
        until("the unit is taken in", () -> {
            press(KeyCode.F1);
            return bench.window().current() == Moment.READY;
        });
        Screen.on(() -> {
            press(KeyCode.F2);
            return true;
        });
        until("the stand is found fit", () -> isReady("action-1") && isReady("action-2"));
    }

    /** Begins a run as soon as the window lets it, whatever it asks before. */
    void begin() throws InterruptedException {
        rest();
        Screen.on(() -> {
            press(KeyCode.F1);
            return true;
        });
    }

    /** Waits until the run that was stopped is graded and kept. */
    void rest() throws InterruptedException {
        until("the run is over", () -> {
            if (asks()) {
                press(KeyCode.F1);
            } else if (bench.window().current() != Moment.READY) {
                press(KeyCode.DIGIT2, true);
            }
            return !asks() && bench.window().current() == Moment.READY && isReady("action-1");
        });
    }

    /** Whether the window asks something. */
    boolean asks() {
        Node prompt = scene.lookup("#prompt");
        return prompt != null && prompt.isVisible();
    }

    private boolean isReady(String action) {
        return scene.lookup("#" + action) instanceof ButtonBase button && !button.isDisabled();
    }

    private void fire(String id) {
        ((ButtonBase) scene.lookup("#" + id)).fire();
    }

    /** Presses a key and lets it go, as the toolkit tells a scene of it. JavaFX thread only. */
    void press(KeyCode key) {
        press(key, false);
    }

    private void press(KeyCode key, boolean alt) {
        fire(KeyEvent.KEY_PRESSED, key, alt);
        fire(KeyEvent.KEY_RELEASED, key, alt);
    }

    private void fire(javafx.event.EventType<KeyEvent> type, KeyCode key, boolean alt) {
        Node target = scene.getFocusOwner() == null ? scene.getRoot() : scene.getFocusOwner();
        Event.fireEvent(target, new KeyEvent(type, "", "", key, false, false, alt, false));
    }

    /** The window. */
    Bench bench() {
        return bench;
    }

    /** Waits until something holds; it is looked at on the JavaFX thread. */
    void until(String what, Callable<Boolean> holds) throws InterruptedException {
        until(what, PATIENCE_SECONDS, holds);
    }

    /** The same with another patience. */
    void until(String what, long seconds, Callable<Boolean> holds) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        while (!Screen.on(holds)) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException(
                        "not within %d s: %s. The window says: %s".formatted(seconds, what, Screen.on(this::words)));
            }
            TimeUnit.MILLISECONDS.sleep(TURN_MILLIS);
        }
    }

    /** Every word that stands in the window. */
    private String words() {
        return scene.getRoot().lookupAll(".label").stream()
                .filter(Labeled.class::isInstance)
                .map(label -> ((Labeled) label).getText())
                .filter(text -> text != null && !text.isBlank())
                .collect(Collectors.joining(" | "));
    }

    @Override
    public void close() {
        try {
            Screen.on(() -> {
                bench.close();
                stage.hide();
                return true;
            });
        } catch (InterruptedException e) {
            // The measurement is broken off; the window ends with the process.
            Thread.currentThread().interrupt();
        }
    }
}
