package org.pumpwright.benchmarks.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import javafx.application.Platform;
import javafx.scene.input.KeyCode;
import org.pumpwright.benchmarks.line.Emulator;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandFile;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.protocol.SampleKind;

/**
 * Presses Esc in the whole window while a run goes on, samples come as fast as the line carries them, and reports are made; prints how long
 * it takes until STOP's frame is written to the board.
 */
public final class StopLatency {
    private static final int PRESSES = 200;
    private static final long SHORTEST_WAIT = 300_000_000;
    private static final long LONGEST_WAIT = 900_000_000;
    private static final long PATIENCE_MILLIS = 5_000;
    private static final WireTiming WHOLE = WireTiming.STANDARD.withSamples(1, SampleKind.WHOLE);
    /** More patience than the program has: a busy machine may keep the emulator, which is no part of it, from running. */
    private static final WireTiming SHORT = new WireTiming(
            WireTiming.STANDARD.keepAlive(),
            Duration.ofSeconds(2),
            WireTiming.STANDARD.tries(),
            WireTiming.STANDARD.hello(),
            Duration.ofSeconds(10),
            2,
            SampleKind.SHORT);

    private final Path root;
    private final Path folder;
    private final int presses;
    private final StandDescription stand;
    private final String plan;
    private final SplittableRandom random = new SplittableRandom(20_261);
    private final SentFrames sent = new SentFrames();
    private final AtomicLong arrived = new AtomicLong();
    private final AtomicLong handled = new AtomicLong();

    private StopLatency(Path root, Path folder, int presses) throws Exception {
        this.root = root;
        this.folder = folder;
        this.presses = presses;
        stand = StandFile.read(root.resolve("fixtures/stands/serial.yaml"));
        plan = Files.readString(root.resolve("fixtures/plans/quick-12v-pump.yaml"));
    }

    /**
     * Measures and prints.
     *
     * @param arguments the root of the source tree; an empty folder; then, if wanted, how many presses at each board, 200 unless given
     */
    public static void main(String[] arguments) {
        int presses = arguments.length > 2 ? Integer.parseInt(arguments[2]) : PRESSES;
        Screen.during(() -> print(Path.of(arguments[0]), Path.of(arguments[1]), presses));
    }

    private static void print(Path root, Path folder, int presses) throws Exception {
        System.out.println(
                "| STOP pressed in the window | reports made meanwhile | presses | p50 ms | p99 ms | longest ms |");
        System.out.println("| --- | --- | --- | --- | --- | --- |");
        int cores = Runtime.getRuntime().availableProcessors();
        new StopLatency(root, folder.resolve("simulated"), presses).simulated(0);
        new StopLatency(root, folder.resolve("loaded"), presses).simulated(cores);
        new StopLatency(root, folder.resolve("emulated"), presses).emulated(cores);
    }

    private void simulated(int makers) throws Exception {
        Stands stands = new Stands(WHOLE, (port, baud) -> {
            SimulatedBoard board = new SimulatedBoard(
                    PracticeUnit.healthy(UnitKind.PUMP_12V, 1).plant(), stand.channels());
            return new ListenedLine(new SimulatedLine(board, 1), sent);
        });
        press("simulated, 1000 whole/s", "none", stands, makers);
    }

    private void emulated(int makers) throws Exception {
        try (Emulator board = Emulator.start(root)) {
            Stands stands = new Stands(SHORT, (port, baud) -> SerialPorts.open(port, baud, sent));
            press("emulated board, 500 short/s", board.port(), stands, makers);
        }
    }

    private void press(String what, String port, Stands stands, int makers) throws Exception {
        Times fromArrival = new Times();
        Times fromHandling = new Times();
        int unwritten = 0;
        int made;
        try (WorkedBench bench = WorkedBench.open(root, folder, plan, port, stands);
                PaperMakers papers = new PaperMakers(makers)) {
            bench.takeIn();
            while (fromArrival.count() + unwritten < presses) {
                drive(bench);
                LockSupport.parkNanos(random.nextLong(SHORTEST_WAIT, LONGEST_WAIT));
                OptionalLong written = stop(bench);
                if (written.isPresent()) {
                    fromArrival.add(written.getAsLong() - arrived.get());
                    fromHandling.add(written.getAsLong() - handled.get());
                } else {
                    unwritten++;
                }
            }
            made = papers.made();
            bench.rest();
        }
        print(what + ": from the key's arrival at the toolkit", made, fromArrival);
        print(what + ": from the key's arrival at the window", made, fromHandling);
        if (unwritten > 0) {
            System.out.printf(Locale.ROOT, "%n%s: %d presses wrote nothing.%n%n", what, unwritten);
        }
    }

    private void drive(WorkedBench bench) throws InterruptedException {
        int before = sent.driven();
        bench.begin();
        bench.until("something is driven", () -> sent.driven() > before);
    }

    /** The key waits in the toolkit's queue like one from the keyboard; what the thread is busy with is part of the time. */
    private OptionalLong stop(WorkedBench bench) throws InterruptedException {
        sent.forget();
        arrived.set(System.nanoTime());
        Platform.runLater(() -> {
            handled.set(System.nanoTime());
            bench.press(KeyCode.ESCAPE);
        });
        return sent.safe(PATIENCE_MILLIS);
    }

    private static void print(String what, int made, Times times) {
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %.2f | %.2f | %.2f |%n",
                what,
                made,
                times.count(),
                times.millis(0.5),
                times.millis(0.99),
                times.millis(1));
    }
}
