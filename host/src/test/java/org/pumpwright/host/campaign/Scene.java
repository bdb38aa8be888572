package org.pumpwright.host.campaign;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.EmulatedBoard.Pins;

/**
 * Where a fault is struck: the board with its pins, and the host's process where it has one. Strikes when the moment has
 * come, while the board's time stands still.
 */
final class Scene {
    private final EmulatedBoard board;
    private final Strike strike;
    private final Course course;
    private final CompletableFuture<Long> struck = new CompletableFuture<>();
    private final CompletableFuture<Process> host = new CompletableFuture<>();
    private final List<Later> later = new ArrayList<>();
    private long now;

    private record Later(long micros, Runnable action) {}

    /** Something goes wrong. */
    @FunctionalInterface
    interface Strike {
        void on(Scene scene);
    }

    Scene(EmulatedBoard board, Strike strike, Moment moment) {
        this.board = board;
        this.strike = strike;
        course = new Course(moment);
        board.watch(this::look);
    }

    EmulatedBoard board() {
        return board;
    }

    /** The board's time at which it was struck, us; -1 when the moment has not come. */
    long struckMicros() {
        return struck.getNow(-1L);
    }

    void hostIs(Process process) {
        host.complete(process);
    }

    Process host() {
        return host.join();
    }

    /** Sends the host's process a signal, e.g. {@code STOP}, and is back when it was sent. */
    void signalHost(String signal) {
        try {
            new ProcessBuilder("kill", "-" + signal, Long.toString(host().pid()))
                    .start()
                    .waitFor();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Has something done after so much of the board's time. Only while striking. */
    void after(int millis, Runnable action) {
        later.add(new Later(now + millis * 1000L, action));
    }

    void command(String format, Object... arguments) {
        board.command(String.format(Locale.ROOT, format, arguments));
    }

    private void look(Pins pins) {
        now = pins.micros();
        for (Iterator<Later> all = later.iterator(); all.hasNext(); ) {
            Later next = all.next();
            if (next.micros() <= now) {
                all.remove();
                next.action().run();
            }
        }
        if (!struck.isDone() && course.reached(pins)) {
            strike.on(this);
            struck.complete(now);
        }
    }
}
