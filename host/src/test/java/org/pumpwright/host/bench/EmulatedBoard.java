package org.pumpwright.host.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.protocol.Inputs;

/**
 * The real microcontroller program in the emulator, with a simulated unit on its pins: the emulator tells what the pins
 * give and is told what the unit answers, in lockstep. The plant is stepped on the reader thread.
 */
public final class EmulatedBoard extends BoardProcess {
    private static final int EXCHANGE_MICROS = 5000;
    private static final long PATIENCE_MILLIS = 60_000;
    private static final double REFERENCE_MILLIVOLTS = 5000;
    private static final double FULL = 65_536;
    private static final int ALL_CLOSED = new Inputs(true, true, true, true, false).bits();

    private final Plant plant;
    private final Channels channels;
    private final Queue<String> commands = new ConcurrentLinkedQueue<>();
    private final Lockstep step = new Lockstep();
    private final List<Pins> history = new ArrayList<>();
    private final List<Consumer<Pins>> watchers = new CopyOnWriteArrayList<>();
    private final Map<ChannelRole, Integer> heldMillivolts = new ConcurrentHashMap<>();
    private final List<String> ports = new CopyOnWriteArrayList<>();
    private volatile UnaryOperator<double[]> meter = edges -> edges;
    private volatile int inputs = ALL_CLOSED;

    /** What the pins gave at a moment of the board's own time; duties in 1/65536. */
    public record Pins(long micros, int duty, int secondDuty, boolean contactorClosed) {
        /** Something is driven or fed. */
        public boolean live() {
            return duty > 0 || secondDuty > 0 || contactorClosed;
        }
    }

    private EmulatedBoard(Plant plant, Channels channels, List<String> command) {
        super(command);
        this.plant = plant;
        this.channels = channels;
    }

    /**
     * @param speed seconds of the board in a second of the wall
     */
    public static EmulatedBoard start(Plant plant, Channels channels, double speed) {
        EmulatedBoard board = new EmulatedBoard(
                plant,
                channels,
                List.of(
                        Firmware.emulator().toString(),
                        "--elf",
                        Firmware.avr328().toString(),
                        "--speed",
                        String.format(Locale.ROOT, "%.3f", speed),
                        "--exchange-us",
                        Integer.toString(EXCHANGE_MICROS)));
        board.listen();
        return board;
    }

    /**
     * A board that runs as fast as it can, but never far ahead of the host: it waits while the host is not scheduled, so
     * that a busy machine can't make a healthy link look lost. Only for hosts that use {@link #line}.
     */
    public static EmulatedBoard inLockstep(Plant plant, Channels channels) {
        return start(plant, channels, 0);
    }

    /** A serial line to this board on which the host's waiting is counted in the board's time. */
    public Line line(String port, int baud) throws StandException {
        return new LockstepLine(SerialPorts.open(port, baud), step);
    }

    /** A command of the emulator, e.g. {@code reset} or {@code unplug}; see its README. */
    public void command(String command) {
        commands.add(command);
    }

    public void setInputs(boolean emergencyStop, boolean guard) {
        setInputs(new Inputs(emergencyStop, guard, true, true, false));
    }

    /** The contactor's feedback is not taken from here: it follows the contactor, or the command {@code feedback}. */
    public void setInputs(Inputs closed) {
        inputs = closed.withContactorFeedback(false).bits();
    }

    /**
     * Has something told of the pins every 5 ms, on the reader thread and while the board's time stands still: what it
     * commands takes effect at that very moment.
     */
    public void watch(Consumer<Pins> watcher) {
        watchers.add(watcher);
    }

    /** From now on this sensor gives a fixed voltage, whatever the unit does. */
    public void holdSensor(ChannelRole role, int millivolts) {
        heldMillivolts.put(role, millivolts);
    }

    /** From now on this sensor gives what it measures. */
    public void releaseSensor(ChannelRole role) {
        heldMillivolts.remove(role);
    }

    /** From now on the flow meter gives what becomes of its edges: offsets in an exchange of 5 ms, s, rising. */
    public void disturbMeter(UnaryOperator<double[]> edges) {
        meter = edges;
    }

    /** The host takes and says nothing for so long, and the board does not wait for it. Only for hosts that use {@link #line}. */
    public void hostAway(long micros) {
        step.hostGoesAway(micros);
    }

    /** The port of now, another one after a replug. */
    public String latestPort() {
        String first = port();
        return ports.isEmpty() ? first : ports.get(ports.size() - 1);
    }

    /** Waits until the board's own time has come so far. */
    public void await(long micros) throws InterruptedException {
        long until = System.currentTimeMillis() + PATIENCE_MILLIS;
        synchronized (history) {
            while (history.isEmpty() || history.get(history.size() - 1).micros() < micros) {
                long left = until - System.currentTimeMillis();
                if (left <= 0) {
                    throw new AssertionError("the board's time stands still before " + micros + " us");
                }
                history.wait(left);
            }
        }
    }

    /** What the pins gave so far, every 5 ms. */
    public List<Pins> history() {
        synchronized (history) {
            return List.copyOf(history);
        }
    }

    @Override
    protected void line(String line) throws IOException {
        if (!line.startsWith("pins ")) {
            if (line.startsWith("port ")) {
                ports.add(line.substring("port ".length()).trim());
            }
            super.line(line);
            return;
        }
        String[] words = line.split(" ");
        Pins pins = new Pins(
                Long.parseLong(words[1]), Integer.parseInt(words[2]), Integer.parseInt(words[3]), words[4].equals("1"));
        synchronized (history) {
            history.add(pins);
            history.notifyAll();
        }
        step.boardReached(pins.micros(), Long.parseLong(words[5]));
        watchers.forEach(watcher -> watcher.accept(pins));
        for (String command = commands.poll(); command != null; command = commands.poll()) {
            toBoard.write(command + "\n");
        }
        double[] duties = {pins.duty() / FULL, pins.secondDuty() / FULL};
        PlantReading reading = plant.step(EXCHANGE_MICROS / 1e6, duties, pins.contactorClosed());
        toBoard.write(answer(reading));
        toBoard.flush();
    }

    private String answer(PlantReading reading) {
        StringBuilder in = new StringBuilder("in");
        int[] millivolts = new int[4];
        for (AnalogChannel channel : channels.analogs()) {
            double si = switch (channel.role()) {
                case VOLTS_AT_PINS -> reading.voltsAtPins();
                case SUPPLY_AMPS -> reading.amps();
                case OUTLET_PRESSURE -> reading.pressurePa();
                case WATER_TEMPERATURE -> reading.waterTemperatureKelvin();
            };
            int fromUnit = (int) Math.round(channel.code(si) / FULL * REFERENCE_MILLIVOLTS);
            millivolts[channel.index()] = heldMillivolts.getOrDefault(channel.role(), fromUnit);
        }
        for (int value : millivolts) {
            in.append(' ').append(value);
        }
        in.append(' ').append(inputs);
        double[][] edges = reading.edgeOffsetsSeconds();
        appendEdges(in, meter.apply(edges[0]));
        appendEdges(in, edges.length > 1 ? edges[1] : new double[0]);
        return in.append('\n').toString();
    }

    private static void appendEdges(StringBuilder in, double[] offsets) {
        in.append(' ').append(offsets.length);
        for (double offset : offsets) {
            in.append(String.format(Locale.ROOT, " %.1f", offset * 1e6));
        }
    }
}
