package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.ui.work.Background;
import org.pumpwright.host.ui.work.StopPress;

/** STOP, whatever else goes on. */
final class StopWhileBusyTest extends WindowTest {
    private static final int PRESSES = 300;

    private BenchWindow window;
    private Background background;

    @BeforeEach
    void build() throws Exception {
        onScreen(() -> {
            window = frame();
            window.add(new PlainScreen(Moment.STAND, window.saying()));
            background = Background.threads(trouble -> {});
            return true;
        });
        show(window.scene(), 1280, 800);
    }

    @AfterEach
    void close() throws Exception {
        onScreen(() -> {
            background.close();
            window.close();
            return true;
        });
    }

    @Test
    void escEndsWhatAWorkerIsBusyWith() throws Exception {
        StopButton button = new StopButton();
        AtomicReference<String> ended = new AtomicReference<>("");
        CountDownLatch begun = new CountDownLatch(1);
        onScreen(() -> background.run(() -> busyUntil(button, begun), ended::set));
        assertThat(begun.await(20, TimeUnit.SECONDS)).isTrue();

        onScreen(() -> {
            press(window.scene(), KeyCode.ESCAPE);
            return true;
        });

        until(() -> !ended.get().isEmpty());
        assertThat(ended.get()).isEqualTo("STOP was pressed in the window");
    }

    private String busyUntil(StopButton button, CountDownLatch begun) {
        StopPress.Registration registered = window.stop().register(button);
        try {
            begun.countDown();
            while (button.pressed().isEmpty()) {
                Thread.onSpinWait();
            }
            return button.pressed().orElseThrow();
        } finally {
            registered.close();
        }
    }

    /** The screen's thread waits here, in the middle of the key's event, until the stand was told; it must not have to. */
    @Test
    void theStandIsToldWhileTheScreensThreadStillHandlesTheKey() throws Exception {
        CountDownLatch told = new CountDownLatch(1);
        boolean toldMeanwhile = onScreen(() -> {
            window.stop().register((Consumer<String>) why -> told.countDown());
            press(window.scene(), KeyCode.F12);
            return told.await(15, TimeUnit.SECONDS);
        });
        assertThat(toldMeanwhile).isTrue();
    }

    @Test
    void oneFaultyStopKeepsNobodyElseFromBeingStopped() throws Exception {
        StopButton second = new StopButton();
        onScreen(() -> {
            window.stop().register((Consumer<String>) why -> {
                throw new IllegalStateException("this one is broken on purpose");
            });
            window.stop().register(second);
            press(window.scene(), KeyCode.PAUSE);
            return true;
        });
        until(() -> second.pressed().isPresent());
        assertThat(second.pressed()).contains("STOP was pressed in the window");
    }

    @Test
    void whatIsNoLongerRegisteredIsNotStopped() throws Exception {
        StopButton gone = new StopButton();
        StopButton there = new StopButton();
        onScreen(() -> {
            window.stop().register(gone).close();
            window.stop().register(there);
            press(window.scene(), KeyCode.ESCAPE);
            return true;
        });
        until(() -> there.pressed().isPresent());
        assertThat(gone.pressed()).isEmpty();
    }

    /** Writes how long it takes from the key to the stand, while every processor is busy; nothing is demanded of a shared machine. */
    @Test
    void theTimeFromKeyToStandIsWrittenDown() throws Exception {
        SynchronousQueue<Long> stopped = new SynchronousQueue<>();
        window.stop().register((Consumer<String>) why -> offer(stopped, System.nanoTime()));
        StopButton enough = new StopButton();
        for (int i = 0; i < Runtime.getRuntime().availableProcessors(); i++) {
            onScreen(() -> background.run(() -> busyUntil(enough, new CountDownLatch(1)), over -> {}));
        }
        long[] nanos = new long[PRESSES];
        for (int i = 0; i < PRESSES; i++) {
            AtomicReference<Long> pressed = new AtomicReference<>(0L);
            Platform.runLater(() -> {
                pressed.set(System.nanoTime());
                press(window.scene(), KeyCode.ESCAPE);
            });
            Long at = stopped.poll(20, TimeUnit.SECONDS);
            assertThat(at).isNotNull();
            nanos[i] = at - pressed.get();
        }
        enough.press("enough");
        Arrays.sort(nanos);
        Path file = Path.of("target", "stop-latency.txt");
        Files.writeString(
                file,
                String.format(
                        Locale.ROOT,
                        "key event to StopButton, %d presses under load: median %.3f ms, p99 %.3f ms, most %.3f ms%n",
                        PRESSES,
                        nanos[PRESSES / 2] / 1e6,
                        nanos[PRESSES * 99 / 100] / 1e6,
                        nanos[PRESSES - 1] / 1e6));
        assertThat(file).isNotEmptyFile();
    }

    private static void offer(SynchronousQueue<Long> queue, long value) {
        try {
            queue.offer(value, 20, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
