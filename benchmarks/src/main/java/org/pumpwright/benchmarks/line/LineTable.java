package org.pumpwright.benchmarks.line;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandFile;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.protocol.SampleKind;

/** Runs the whole way from board to host, with the machine idle and with all its cores busy, and prints two tables. */
public final class LineTable {
    private static final int BAUD = 250_000;
    private static final int WHOLE_MILLIS = 1;
    private static final int SHORT_MILLIS = 2;
    private static final double METER_HZ = 250;
    private static final WireTiming WHOLE = WireTiming.STANDARD.withSamples(WHOLE_MILLIS, SampleKind.WHOLE);
    /** More patience than the program has: a busy machine may keep the emulator, which is no part of it, from running. */
    private static final WireTiming SHORT = new WireTiming(
            WireTiming.STANDARD.keepAlive(),
            WireTiming.STANDARD.answer(),
            WireTiming.STANDARD.tries(),
            WireTiming.STANDARD.hello(),
            Duration.ofSeconds(10),
            SHORT_MILLIS,
            SampleKind.SHORT);

    private final Path root;
    private final double seconds;
    private final int presses;
    private final StandDescription simulated;
    private final StandDescription serial;
    private final StringBuilder stops = new StringBuilder();
    private final StringBuilder remarks = new StringBuilder();

    private LineTable(Path root, double seconds, int presses) throws DataFileException {
        this.root = root;
        this.seconds = seconds;
        this.presses = presses;
        simulated = StandFile.read(root.resolve("fixtures/stands/simulated.yaml"));
        serial = StandFile.read(root.resolve("fixtures/stands/serial.yaml"));
    }

    /**
     * Measures and prints.
     *
     * @param arguments the root of the source tree; then, when not the standard, seconds of each stream (60) and presses
     *     of STOP (1000)
     */
    public static void main(String[] arguments) throws DataFileException, IOException, InterruptedException {
        double seconds = arguments.length > 1 ? Double.parseDouble(arguments[1]) : 60;
        int presses = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 1000;
        new LineTable(Path.of(arguments[0]), seconds, presses).print();
    }

    private void print() throws IOException, InterruptedException {
        int cores = Runtime.getRuntime().availableProcessors();
        say(
                "%s, %d cores, %s, Java %s. Load of the machine %.2f at the start.%n",
                processor(), cores, system(), System.getProperty("java.version"), load());
        say("| stream | cores busy | samples | of | gaps | frames lost | broken | edges | board s | wall s |");
        say("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        measure("0");
        try (BusyCores busy = new BusyCores(cores)) {
            measure(Integer.toString(cores));
        }
        say(
                "%n| STOP pressed | cores busy | presses | p50 ms | p99 ms | max ms |%n| --- | --- | --- | --- | --- | --- |");
        System.out.print(stops);
        System.out.print(remarks);
        say("%nLoad of the machine %.2f at the end.", load());
    }

    private void measure(String busy) throws IOException, InterruptedException {
        carried("simulated, 1000 whole/s, as fast as it can", busy, simulated(0), WHOLE_MILLIS);
        carried("simulated, 1000 whole/s, in real time", busy, simulated(1), WHOLE_MILLIS);
        try (Emulator board = Emulator.start(root, METER_HZ);
                WireStand stand = new WireStand(serial, () -> SerialPorts.open(board.port(), BAUD), SHORT)) {
            carried("emulated board, 500 short/s", busy, stand, SHORT_MILLIS);
        }
        try (Emulator board = Emulator.start(root, METER_HZ)) {
            Presser presser = new Presser();
            try (WireStand stand = new WireStand(serial, () -> SerialPorts.open(board.port(), BAUD, presser), SHORT)) {
                StopPresses stop = new StopPresses(stand, presser);
                press(stop, busy);
                stopped(busy, stop, presser);
            }
        }
    }

    private WireStand simulated(double pace) {
        SimulatedBoard board =
                new SimulatedBoard(PracticeUnit.healthy(UnitKind.PUMP_12V, 1).plant(), simulated.channels());
        board.holdMeter(METER_HZ);
        return new WireStand(simulated, () -> new SimulatedLine(board, pace), WHOLE);
    }

    private void carried(String what, String busy, WireStand stand, int periodMillis) {
        try (stand) {
            Carried carried = Carried.by(stand, periodMillis, seconds);
            say(
                    "| %s | %s | %d | %d | %d | %d | %d | %d | %.2f | %.2f |",
                    what,
                    busy,
                    carried.samples(),
                    carried.periods(),
                    carried.link().gaps(),
                    carried.link().lost(),
                    carried.link().broken(),
                    carried.edges(),
                    carried.boardSeconds(),
                    carried.wallSeconds());
        } catch (StandException e) {
            say("| %s | %s | - | - | - | - | - | - | - | - |", what, busy);
            remarks.append(line("%n%s, %s cores busy, was not carried to its end: %s", what, busy, e.getMessage()));
        }
    }

    private void press(StopPresses stop, String busy) throws InterruptedException {
        try {
            stop.press(presses);
        } catch (StandException e) {
            remarks.append(line("%n%s cores busy: the presses ended early: %s", busy, e.getMessage()));
        }
    }

    private void stopped(String busy, StopPresses stop, Presser presser) {
        stops.append(row("until the call returned", busy, presser.returned()));
        stops.append(row("until the bytes were handed to the system", busy, presser.handedOver()));
        stops.append(row("until a sample with the drive at 0 was in hand", busy, stop.proven()));
        remarks.append(line(
                "%n%s cores busy: %d presses that the line did not take; the board was lost or refused %d times and opened"
                        + " anew.",
                busy, stop.unwritten(), stop.disturbed()));
    }

    private static String row(String what, String busy, Latencies times) {
        return line(
                "| %s | %s | %d | %.3f | %.3f | %.3f |",
                what, busy, times.count(), times.millis(0.5), times.millis(0.99), times.millis(1));
    }

    private static String processor() throws IOException {
        Path file = Path.of("/proc/cpuinfo");
        List<String> lines = Files.exists(file) ? Files.readAllLines(file) : List.of();
        return lines.stream()
                .filter(line -> line.startsWith("model name"))
                .map(line -> line.substring(line.indexOf(':') + 1).trim())
                .findFirst()
                .orElse(System.getProperty("os.arch"));
    }

    private static String system() {
        return System.getProperty("os.name") + " " + System.getProperty("os.version");
    }

    private static double load() {
        return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    }

    private static void say(String format, Object... values) {
        System.out.print(line(format, values));
    }

    private static String line(String format, Object... values) {
        return String.format(Locale.ROOT, format + "%n", values);
    }
}
